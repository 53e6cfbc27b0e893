import { isDimensionLetter } from './dimension-letters.ts';
import { plainWhole, readFraction } from './fraction.ts';
import { at, type Tokens } from './lexer.ts';
import { clockName, measures, type NameRead, name } from './name-read.ts';
import { callWords, gluedJoins, gluedWords, months, yearWords } from './name-words.ts';
import { readUnit } from './unit.ts';

/** Dates, telephone numbers, part numbers and times. */
export function readNumberName(tokens: Tokens, i: number): NameRead | undefined {
  const first = at(tokens, i);
  if (first.style === 'odd' || isListMark(tokens, i)) return name('other', i + 1);
  const clock = clockName(tokens, i);
  if (clock) return clock;
  return readChain(tokens, i) ?? readGlued(tokens, i) ?? readYear(tokens, i) ?? readCalled(tokens, i);
}

/** `1) 12 ft wide`: the number of a line in a list. */
function isListMark(tokens: Tokens, i: number): boolean {
  const close = at(tokens, i + 1);
  const opens = i === 0 || at(tokens, i - 1).text === '\n';
  return opens && close.text === ')' && !close.gap && at(tokens, i + 2).gap && at(tokens, i + 2).kind !== 'end';
}

/** No measure is written with more numbers in a row, joined by one sign. */
const longestChain = 8;

/** Numbers joined by the same sign: 6/15/2024, 12/25, 24/7, 2024-05-12, 555-1234, 10-4. */
function readChain(tokens: Tokens, i: number): NameRead | undefined {
  const sign = at(tokens, i + 1);
  if ((sign.text !== '/' && sign.text !== '-') || sign.gap || !plainWhole(at(tokens, i))) return undefined;
  let next = i + 1;
  let numbers = 1;
  while (at(tokens, next).text === sign.text && !at(tokens, next).gap) {
    const number = at(tokens, next + 1);
    if (number.gap || !plainWhole(number)) break;
    next += 2;
    numbers++;
  }
  if (numbers === 1) return undefined;
  // Nor is it gone through again from each of its numbers.
  if (numbers > longestChain) return name('other', next);
  if (mixedRange(tokens, i) || readUnit(tokens, next)) return undefined;
  const [a, b, c] = [at(tokens, i), at(tokens, i + 2), at(tokens, i + 4)];
  const dated = isDay(a.value, b.value) || isDay(b.value, a.value);
  if (numbers === 2) {
    const phone = sign.text === '-' && a.raw.length === 3 && b.raw.length === 4;
    const day = sign.text === '/' && dated && !readFraction(tokens, i);
    return phone || day ? name('other', next) : undefined;
  }
  const date = (dated && (c.value <= 99 || isYear(c.value))) || (isYear(a.value) && isDay(b.value, c.value));
  const phone = sign.text === '-' && (numbers > 3 || (a.raw.length === 3 && c.raw.length === 4));
  return date || phone ? name('other', next) : undefined;
}

/** A month and a day of it; 24/7 passes for one. */
function isDay(month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= 31;
}

function isYear(year: number): boolean {
  return year >= 1950 && year <= 2049;
}

/** `1-1/2-2 in` is a range, not a date: a mixed number in it. */
function mixedRange(tokens: Tokens, i: number): boolean {
  return [i, i + 2, i + 4].some((k) => at(tokens, k + 1).text === '-' && readFraction(tokens, k + 2) !== undefined);
}

/** 140M, 1e9: letters glued to a number that are no unit. */
function readGlued(tokens: Tokens, i: number): NameRead | undefined {
  const letters = at(tokens, i + 1);
  if (letters.kind !== 'letters' || letters.gap || gluedJoins.has(letters.text)) return undefined;
  const after = at(tokens, i + 2);
  const digits = after.kind === 'number' && !after.gap;
  if (isDimensionLetter(tokens, i + 1)) return undefined;
  if (readUnit(tokens, i + 1) && !isDecade(tokens, i)) return undefined;
  if (gluedWords.has(letters.text)) return undefined;
  if (letters.raw === 'k' || (letters.text === 'k' && readUnit(tokens, i + 2))) return undefined;
  if (letters.text.length <= 2 || (digits && letters.text.length === 3)) return name('other', digits ? i + 3 : i + 2);
  return undefined;
}

/** 40s, 1990s: a decade glued to its s; `45s` is seconds. */
function isDecade(tokens: Tokens, i: number): boolean {
  const number = at(tokens, i);
  if (at(tokens, i + 1).raw !== 's' || !plainWhole(number) || !number.raw.endsWith('0')) return false;
  return number.value >= 20 && number.value < 2100 && readUnit(tokens, i + 1)?.unit === 's';
}

function readYear(tokens: Tokens, i: number): NameRead | undefined {
  const year = at(tokens, i);
  if (year.raw.length !== 4 || !isYear(year.value)) return undefined;
  const said = yearWords.has(at(tokens, i - 1).text) || months.has(at(tokens, i - 1).text);
  return said && !measures(tokens, i + 1) ? name('other', i + 1) : undefined;
}

function readCalled(tokens: Tokens, i: number): NameRead | undefined {
  const dialled = at(tokens, i).raw === '911' || at(tokens, i).raw === '811';
  return dialled && callWords.has(at(tokens, i - 1).text) ? name('other', i + 1) : undefined;
}
