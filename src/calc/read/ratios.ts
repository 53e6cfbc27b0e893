import { plainWhole, readFraction } from './fraction.ts';
import { at, type Token, type Tokens } from './lexer.ts';
import { numberWords } from './number-words.ts';
import { readNumber } from './numbers.ts';
import { readUnit } from './unit.ts';

/** `2:1`, `50/50`, "one to one", "half and half". */
export interface RatioRead {
  readonly start: number;
  readonly next: number;
  readonly parts: readonly [number, number];
}

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

/** The ratio that begins at token `i`, or undefined. A ratio of nothing is none. */
export function readRatio(tokens: Tokens, i: number): RatioRead | undefined {
  const first = at(tokens, i);
  if (first.text === 'half') return readHalves(tokens, i);
  const a = count(first);
  if (a === undefined) return undefined;
  const join = at(tokens, i + 1);
  if (join.text === ':') return readColon(tokens, i, a);
  if (join.text === '/') return readShares(tokens, i);
  if (join.text === '-' && !join.gap) return readDoubled(tokens, i, a);
  return ['to', 'a', 'part', 'parts'].includes(join.text) ? readTo(tokens, i, a) : undefined;
}

function readColon(tokens: Tokens, i: number, a: number): RatioRead | undefined {
  const colon = at(tokens, i + 1);
  const second = at(tokens, i + 2);
  const b = second.kind === 'number' ? count(second) : undefined;
  if (b === undefined || b === 0 || colon.gap !== second.gap) return undefined;
  return { start: i, next: i + 3, parts: [a, b] };
}

/** `50/50`, `60/40`: shares of a hundred. */
function readShares(tokens: Tokens, i: number): RatioRead | undefined {
  const [over, slash, under] = [at(tokens, i), at(tokens, i + 1), at(tokens, i + 2)];
  if (slash.gap || under.gap || !plainWhole(over) || !plainWhole(under)) return undefined;
  if (over.value + under.value !== 100 || under.value === 0 || readFraction(tokens, i)) return undefined;
  return { start: i, next: i + 3, parts: [over.value, under.value] };
}

/** "Fifty-fifty", `50-50`, "one-to-one". */
function readDoubled(tokens: Tokens, i: number, a: number): RatioRead | undefined {
  if (at(tokens, i + 2).text === 'to') {
    const b = at(tokens, i + 3).text === '-' ? count(at(tokens, i + 4)) : undefined;
    return b ? { start: i, next: i + 5, parts: [a, b] } : undefined;
  }
  return a === 50 && count(at(tokens, i + 2)) === 50 ? { start: i, next: i + 3, parts: [50, 50] } : undefined;
}

/** "1 to 1", "three to one", "1 part to 2 parts"; "1 to 3" only beside a word that shows a ratio. */
function readTo(tokens: Tokens, i: number, a: number): RatioRead | undefined {
  let next = i + 1;
  if (at(tokens, i - 1).text === 'from') return undefined;
  let worded = ratioBefore.has(at(tokens, i - 1).text) && i > 0;
  if (at(tokens, next).text.startsWith('part')) {
    worded = true;
    next++;
  }
  const join = at(tokens, next).text;
  const b = join === 'to' || join === 'a' ? count(at(tokens, next + 1)) : undefined;
  if (!b || !Number.isInteger(a) || !Number.isInteger(b) || a === 0) return undefined;
  const after = at(tokens, next + 2);
  const parts = after.text.startsWith('part');
  if (['/', ':', '+'].includes(after.text) || (!parts && readUnit(tokens, next + 2))) return undefined;
  if ((readNumber(tokens, next + 1)?.next ?? 0) > next + 2) return undefined; // 1 to 1 1/2
  const shown = worded || parts || ratioAfter.has(after.text);
  if (!(shown || (b === 1 && a >= 1 && (after.kind !== 'letters' || join === 'to')))) return undefined;
  return { start: i, next: parts ? next + 3 : next + 2, parts: [a, b] };
}

function readHalves(tokens: Tokens, i: number): RatioRead | undefined {
  const and = at(tokens, i + 1).text === 'and' || at(tokens, i + 1).text === '&';
  return and && at(tokens, i + 2).text === 'half' ? { start: i, next: i + 3, parts: [1, 1] } : undefined;
}

function count(token: Token): number | undefined {
  if (token.kind === 'number') return token.style === 'whole' || token.style === 'decimal' ? token.value : undefined;
  const word = token.kind === 'letters' ? numberWords.get(token.text) : undefined;
  return word && word.rank !== 'hundred' && word.rank !== 'thousand' ? word.value : undefined;
}
