import { readFraction } from './fraction.ts';
import { at, type Tokens } from './lexer.ts';
import { type NumberRead, numberRead } from './measured.ts';
import { numberWords, partWords } from './number-words.ts';
import { afterHyphen, isArticle } from './tokens.ts';
import { readUnit } from './unit.ts';

/** "Half an inch", "a quarter mile", "three quarters of an inch", "a tenth of a gallon": a part of one unit. */
export function readPart(tokens: Tokens, i: number): NumberRead | undefined {
  const first = at(tokens, i).text;
  const counted = first === 'one' || first === '1' || first === 'un' || first === 'una';
  const article = first === 'a' || first === 'an';
  const from = counted || article ? afterHyphen(tokens, i + 1) : i;
  const word = partWords.get(at(tokens, from).text);
  if (!word || word.plural) return undefined;
  const number = 1 / word.parts;
  const next = beforeUnit(tokens, from + 1);
  const named = !word.ordinal || counted || article || at(tokens, from + 1).text === 'of';
  if (next !== undefined && named) return numberRead(number, next, 'spelled');
  if (word.parts === 2 && at(tokens, from + 1).text === 'a' && at(tokens, from + 2).kind === 'letters') {
    const dozen = at(tokens, from + 2).text === 'dozen';
    return numberRead(dozen ? 6 : number, from + (dozen ? 3 : 2), 'spelled');
  }
  if (word.parts === 2 && at(tokens, from + 1).text === 'dozen') return numberRead(6, from + 2, 'spelled');
  // "Half to three quarters of an inch": the unit of the other end is its own.
  const rangeEnd = isRangeEnd(tokens, from);
  const small = article && word.parts >= 8 && word.parts !== 10;
  return counted || small || rangeEnd ? numberRead(number, from + 1, 'spelled') : undefined;
}

/** True for "half or", "quarter to" before another number, but not in "cut in half or 2 pieces". */
function isRangeEnd(tokens: Tokens, i: number): boolean {
  const join = at(tokens, i + 1).text;
  if ((join !== 'to' && join !== 'or') || at(tokens, i - 1).text === 'in') return false;
  const other = at(tokens, i + 2);
  return other.kind === 'number' || numberWords.has(other.text) || partWords.has(other.text) || isArticle(other);
}

/** The parts after a count of them: "three QUARTERS of an inch", "5 EIGHTHS", "three QUARTER inch". */
export function readPartsOf(tokens: Tokens, i: number, count: number): NumberRead | undefined {
  if (!Number.isInteger(count) || count < 1 || count > 99) return undefined;
  const at0 = afterHyphen(tokens, i);
  const word = partWords.get(at(tokens, at0).text);
  if (!word || count >= word.parts) return undefined;
  const unit = beforeUnit(tokens, at0 + 1);
  const singular = unit !== undefined && isSingularPart(count, word.parts);
  if (!word.plural && !singular && count !== 1) return undefined;
  return numberRead(count / word.parts, unit ?? at0 + 1, 'spelled');
}

/** What "and" adds to a whole number or to a unit: "two AND A HALF", "inch AND A QUARTER", "three AND 5/8", "y media". */
export function readAndPart(tokens: Tokens, i: number): { number: number; next: number } | undefined {
  const and = afterAnd(tokens, i);
  if (and === undefined) return undefined;
  const join = afterHyphen(tokens, and);
  const fraction = readFraction(tokens, join);
  if (fraction && fraction.number < 1 && at(tokens, join).kind === 'number') return fraction;
  const first = at(tokens, join).text;
  const count = numberWords.get(first)?.value ?? (first === 'a' || first === 'an' ? 1 : 0);
  const part = afterHyphen(tokens, count > 0 ? join + 1 : join);
  const word = partWords.get(at(tokens, part).text);
  if (!word || (count > 1 && !word.plural && !isSingularPart(count, word.parts))) return undefined;
  return Math.max(count, 1) < word.parts ? { number: Math.max(count, 1) / word.parts, next: part + 1 } : undefined;
}

/** Words for "and" before a part, most of them clipped: inch n a half, inch 'n' a half, inch an' a half. */
const ands = new Set(['and', '&', 'y', 'n', 'nd', 'an']);

/** The token after "and", with the quotes of 'n'; undefined when no "and" stands at `i`. */
export function afterAnd(tokens: Tokens, i: number): number | undefined {
  const hyphen = afterHyphen(tokens, i);
  const quoted = at(tokens, hyphen).text === "'" && at(tokens, hyphen + 1).text === 'n' && !at(tokens, hyphen + 1).gap;
  const start = quoted ? hyphen + 1 : hyphen;
  const { text, gap } = at(tokens, start);
  if (!ands.has(text) || (text === 'nd' && !gap)) return undefined;
  const clipped = (text === 'n' || text === 'an') && at(tokens, start + 1).text === "'" && !at(tokens, start + 1).gap;
  // "An" alone is the article: inch AN A half, not mile AN hour.
  if (text === 'an' && !clipped && at(tokens, start + 1).text !== 'a') return undefined;
  return clipped ? start + 2 : start + 1;
}

/** Three QUARTER, five EIGHTH: parts that stand without their s. */
function isSingularPart(count: number, parts: number): boolean {
  return count % 2 === 1 && (parts === 4 || parts === 8 || parts === 16);
}

/** The unit after a part in digits, past its "of a": 2/10 OF A mile, 1/2 A mile. The part itself when no unit is named so. */
export function skipOfA(tokens: Tokens, i: number): number {
  const of = at(tokens, i).text === 'of' || at(tokens, i).text === 'de' ? i + 1 : i;
  const article = isArticle(at(tokens, of));
  return article && readUnit(tokens, of + 1) ? of + 1 : i;
}

/** The token of the unit a part is of, past "of" and an article; undefined when no unit follows. */
function beforeUnit(tokens: Tokens, i: number): number | undefined {
  let next = i;
  if (at(tokens, next).text === 'of' || at(tokens, next).text === 'de') next++;
  if (isArticle(at(tokens, afterHyphen(tokens, next)))) next = afterHyphen(tokens, next) + 1;
  const unit = at(tokens, afterHyphen(tokens, next)).kind === 'letters' ? readUnit(tokens, next) : undefined;
  return unit ? next : undefined;
}
