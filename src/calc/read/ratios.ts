import { plainWhole, readFraction } from './fraction.ts';
import { at, type Token, type Tokens } from './lexer.ts';
import { type Measured, measured } from './measured.ts';
import { numberWords } from './number-words.ts';
import { readNumber } from './numbers.ts';
import { readUnit } from './unit.ts';

/** Words that show a ratio in "1 to 3": before it, or after it. */
const ratioBefore = new Set(['diluted', 'dilute', 'diluting', 'dilution', 'cut', 'ratio', 'slope', 'mixed', 'diluido']);
const ratioAfter = new Set([
  'slope',
  'slopes',
  'sideslope',
  'dilution',
  'ratio',
  'water',
  'cut',
  'foreslope',
  'backslope',
  'with',
]);

const toWords = new Set(['to', 'a', 'part', 'parts']);

/** The ratio that begins at token `i` (`2:1`, `50/50`, "one to one", "half and half"), or undefined. A ratio of nothing is none. */
export function readRatio(tokens: Tokens, i: number): Measured | undefined {
  const first = at(tokens, i);
  if (first.text === 'half') return readHalves(tokens, i);
  const a = count(first);
  if (a === undefined) return undefined;
  const join = at(tokens, i + 1);
  if (join.text === ':') return readColon(tokens, i, a);
  if (join.text === '/') return readShares(tokens, i);
  if (join.text === '-' && !join.gap) return readDoubled(tokens, i, a);
  return toWords.has(join.text) ? readTo(tokens, i, a) : undefined;
}

function readColon(tokens: Tokens, i: number, a: number): Measured | undefined {
  const colon = at(tokens, i + 1);
  const second = at(tokens, i + 2);
  const b = second.kind === 'number' ? count(second) : undefined;
  if (b === undefined || b === 0 || colon.gap !== second.gap) return undefined;
  return ratio(i, i + 3, a, b);
}

/** `50/50`, `60/40`: shares of a hundred. */
function readShares(tokens: Tokens, i: number): Measured | undefined {
  const [over, slash, under] = [at(tokens, i), at(tokens, i + 1), at(tokens, i + 2)];
  if (slash.gap || under.gap || !plainWhole(over) || !plainWhole(under)) return undefined;
  if (over.value + under.value !== 100 || under.value === 0 || readFraction(tokens, i)) return undefined;
  return ratio(i, i + 3, over.value, under.value);
}

/** "Fifty-fifty", `50-50`, "one-to-one". */
function readDoubled(tokens: Tokens, i: number, a: number): Measured | undefined {
  if (at(tokens, i + 2).text === 'to') {
    const b = at(tokens, i + 3).text === '-' ? count(at(tokens, i + 4)) : undefined;
    const shares = b !== undefined && (b === 1 || a === b) && !readUnit(tokens, i + 5);
    return shares ? ratio(i, i + 5, a, b) : undefined;
  }
  return a === 50 && count(at(tokens, i + 2)) === 50 ? ratio(i, i + 3, 50, 50) : undefined;
}

/** "1 to 1", "three to one", "1 part to 2 parts"; "1 to 3" only beside a word that shows a ratio. */
function readTo(tokens: Tokens, i: number, a: number): Measured | undefined {
  let next = i + 1;
  if (at(tokens, i - 1).text === 'from') return undefined;
  let worded = ratioBefore.has(at(tokens, i - 1).text) && i > 0;
  if (at(tokens, next).text.startsWith('part')) {
    worded = true;
    next++;
  }
  const join = at(tokens, next).text;
  const b = join === 'to' || join === 'a' ? count(at(tokens, next + 1)) : undefined;
  if (!b || !Number.isInteger(b) || a === 0 || !(Number.isInteger(a) || b === 1)) return undefined;
  const after = at(tokens, next + 2);
  const parts = after.text.startsWith('part');
  if (after.text === '/' || after.text === ':' || after.text === '+') return undefined;
  if (!parts && readUnit(tokens, next + 2)) return undefined;
  if ((readNumber(tokens, next + 1)?.next ?? 0) > next + 2) return undefined; // 1 to 1 1/2
  const shown = worded || parts || ratioAfter.has(after.text);
  if (!(shown || (b === 1 && a >= 1 && (after.kind !== 'letters' || join === 'to')))) return undefined;
  return ratio(i, parts ? next + 3 : next + 2, a, b);
}

function readHalves(tokens: Tokens, i: number): Measured | undefined {
  const and = at(tokens, i + 1).text === 'and' || at(tokens, i + 1).text === '&';
  return and && at(tokens, i + 2).text === 'half' ? ratio(i, i + 3, 1, 1) : undefined;
}

function count(token: Token): number | undefined {
  if (token.kind === 'number') return token.style === 'whole' || token.style === 'decimal' ? token.value : undefined;
  const word = token.kind === 'letters' ? numberWords.get(token.text) : undefined;
  return word && word.rank !== 'hundred' && word.rank !== 'thousand' ? word.value : undefined;
}

function ratio(start: number, next: number, a: number, b: number): Measured {
  const read = measured(start, next, a / b);
  read.form = 'ratio';
  read.parts = [a, b];
  return read;
}
