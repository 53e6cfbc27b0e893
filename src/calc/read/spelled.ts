import { at, type Token, type Tokens } from './lexer.ts';
import { type NumberRead, numberRead } from './measured.ts';
import { afterPronoun, beforePronoun, roleWords } from './near-words.ts';
import { numberWords, partWords, type Rank, spokenDigits } from './number-words.ts';
import { afterAnd, readAndPart, readPart, readPartsOf } from './parts.ts';
import { readUnit } from './unit.ts';
import { isSpanishUnit } from './unit-atoms.ts';

/** Which word may follow which: "twenty" then "five", "two" then "hundred". */
const follows: Readonly<Record<Rank, readonly (Rank | 'start')[]>> = {
  one: ['start', 'ten', 'hundreds', 'hundred', 'thousand'],
  teen: ['start', 'hundreds', 'hundred', 'thousand'],
  ten: ['start', 'hundreds', 'hundred', 'thousand'],
  hundreds: ['start', 'thousand'],
  hundred: ['start', 'one', 'teen', 'ten'],
  thousand: ['start', 'one', 'teen', 'ten', 'hundreds', 'hundred'],
};

/** Numbers in words end here; nobody spells more. */
const mostSpelled = 999_999;

/** Words a spelled number can begin with. */
export const spelledStarts: readonly string[] = [
  'a',
  'an',
  'point',
  'oh',
  'couple',
  'dozen',
  'docena',
  ...numberWords.keys(),
  ...partWords.keys(),
];

/** A number in words, from 0 to 999,999, with its parts: "two hundred and fifty", "a quarter", "one and one-half". */
export function readSpelled(tokens: Tokens, i: number): NumberRead | undefined {
  const first = at(tokens, i);
  const article = first.text === 'a' || first.text === 'an';
  const start = article ? i + 1 : i;
  const counted = readCollective(tokens, start);
  if (counted) return counted;
  const part = readPart(tokens, i);
  if (part) return part;
  if (article && at(tokens, start).text !== 'hundred' && at(tokens, start).text !== 'thousand') return undefined;
  const spoken = readPoint(tokens, start, '0');
  if (spoken) return spoken;
  const whole = readShortHundred(tokens, start) ?? readWhole(tokens, start);
  if (!whole) return undefined;
  const parts = readPartsOf(tokens, whole.next, whole.number);
  if (parts) return parts;
  const decimal = whole.number < 100 ? readPoint(tokens, whole.next, String(whole.number)) : undefined;
  const dozens = at(tokens, whole.next).text === 'dozen';
  return (
    decimal ?? numberRead(dozens ? whole.number * 12 : whole.number, dozens ? whole.next + 1 : whole.next, 'spelled')
  );
}

/** A dozen, half a dozen, two dozen; a couple is about two. */
function readCollective(tokens: Tokens, i: number): NumberRead | undefined {
  const word = at(tokens, i).text;
  if (word === 'couple') {
    const next = at(tokens, i + 1).text === 'of' ? i + 2 : i + 1;
    const word = numberWords.get(at(tokens, next).text);
    const times = word?.rank === 'hundred' || word?.rank === 'thousand' ? word.value : 1;
    return numberRead(2 * times, times > 1 ? next + 1 : next, 'spelled', undefined, true);
  }
  if (word === 'dozen' || word === 'docena') {
    return numberRead(12, i + (at(tokens, i + 1).text === 'de' ? 2 : 1), 'spelled');
  }
  return undefined;
}

/** "Point zero five", "one point five". */
function readPoint(tokens: Tokens, i: number, whole: string): NumberRead | undefined {
  const start = whole === '0' && at(tokens, i).text === 'oh' ? i + 1 : i;
  if (at(tokens, start).text !== 'point') return undefined;
  let digits = '';
  let next = start + 1;
  for (; digits.length < 4; next++) {
    const digit = spokenDigits.get(at(tokens, next).text);
    if (digit === undefined) break;
    digits += digit;
  }
  return digits === '' ? undefined : numberRead(Number(`${whole}.${digits}`), next, 'spelled');
}

function readWhole(tokens: Tokens, i: number): { number: number; next: number } | undefined {
  let total = 0;
  let current = 0;
  let last: Rank | 'start' = 'start';
  let next = i;
  for (let words = 0; words < 8; words++) {
    const from: number = words === 0 ? i : afterJoin(tokens, next, last);
    const token = at(tokens, from);
    const word = token.kind === 'letters' ? numberWords.get(token.text) : undefined;
    if (!word || !follows[word.rank].includes(last) || !stands(tokens, from, words)) break;
    if (word.rank === 'hundred') current = Math.max(current, 1) * 100;
    else if (word.rank === 'thousand') {
      if (total > 0) break;
      total = Math.max(current, 1) * 1000;
      current = 0;
    } else current += word.value;
    if (word.value === 0 && words > 0) break;
    last = word.rank;
    next = from + 1;
  }
  if (last === 'start' || total + current > mostSpelled) return undefined;
  return { number: total + current, next };
}

/**
 * "One fifty", "two fifteen": hundreds said short. Read so only where no count of things fits: at an end, before a role
 * or a plural unit. "Two fifty foot patches" stays two and fifty.
 */
function readShortHundred(tokens: Tokens, i: number): { number: number; next: number } | undefined {
  const hundreds = numberWords.get(at(tokens, i).text);
  const tens = numberWords.get(at(tokens, i + 1).text);
  if (hundreds?.rank !== 'one' || hundreds.value === 0 || hundreds.spanish || !tens) return undefined;
  if (tens.spanish || (tens.rank !== 'ten' && tens.rank !== 'teen')) return undefined;
  const rest = readWhole(tokens, i + 1)!;
  const after = at(tokens, rest.next);
  const unit = readUnit(tokens, rest.next);
  const plural = unit?.spelled === true && (after.text.endsWith('s') || after.text === 'feet');
  const ends = after.kind !== 'letters' && after.kind !== 'number' && !unit;
  const role = roleWords.has(after.text) || after.text === 'x' || after.text === 'by' || after.text === 'at';
  if (rest.number > 99 || !(plural || ends || role)) return undefined;
  return { number: hundreds.value * 100 + rest.number, next: rest.next };
}

/** The word after a hyphen, after "and" (two hundred AND fifty) or after "y" (treinta Y cinco). */
function afterJoin(tokens: Tokens, next: number, last: Rank | 'start'): number {
  const join = at(tokens, next);
  if (join.text === '-' && !join.gap && !at(tokens, next + 1).gap) return afterJoin(tokens, next + 1, last);
  const and = join.text === 'and' && (last === 'hundred' || last === 'thousand');
  const counts = and && !fractionAfter(tokens, next + 1);
  return counts || (join.text === 'y' && last === 'ten') ? next + 1 : next;
}

/** "Hundred and one half": the half is a part, not a hundred and one. */
function fractionAfter(tokens: Tokens, i: number): boolean {
  const part = readPart(tokens, i);
  return part !== undefined && !Number.isInteger(part.number);
}

/** "A few hundred feet" is no number. */
const uncounted = new Set(['few', 'several', 'many', 'some', 'couple']);

/** False for the words that are numbers only in some company: `one` the pronoun, `once` and `un`, `mil` before no number. */
function stands(tokens: Tokens, i: number, words: number): boolean {
  const word = at(tokens, i).text;
  const next = at(tokens, i + 1);
  switch (word) {
    case 'once':
    case 'un':
    case 'una':
      return (
        words > 0 ||
        isSpanishUnit(next.text) ||
        ((word === 'un' || word === 'una') && readUnit(tokens, i + 1)?.spanish === true)
      );
    case 'uno':
      return words > 0 || next.text === 'a' || at(tokens, i - 1).text === 'a';
    case 'hundred':
    case 'thousand':
      return words > 0 || !uncounted.has(at(tokens, i - 1).text);
    case 'ciento':
      return numberWords.get(next.text)?.spanish ?? false;
    case 'mil':
      return words > 0 || isSpanishUnit(next.text) || (numberWords.get(next.text)?.spanish ?? false);
    case 'one':
      return words > 0 || isOne(tokens, i);
    default:
      return true;
  }
}

/** `one` is a number before a thing ("one lift", "one and a half"), a pronoun elsewhere ("which one is right"). */
function isOne(tokens: Tokens, i: number): boolean {
  const next = at(tokens, i + 1);
  const before = i > 0 ? at(tokens, i - 1).text : '';
  if (next.text === '-') return true;
  const and = afterAnd(tokens, i + 1);
  if (and !== undefined && fractionAfter(tokens, and)) return true;
  if (readAndPart(tokens, i + 1)) return true;
  // "Between one and two inches".
  if ((before === 'between' || before === 'entre') && and !== undefined && isCount(at(tokens, and))) return true;
  if ((next.text === 'or' || next.text === 'to') && numberWords.has(at(tokens, i + 2).text)) return true;
  if (readUnit(tokens, i + 1)) return true;
  if (next.kind !== 'letters') return before === 'to' && isCount(at(tokens, i - 2));
  return !afterPronoun.has(next.text) && !beforePronoun.has(before);
}

function isCount(token: Token): boolean {
  return token.kind === 'number' || numberWords.has(token.text);
}
