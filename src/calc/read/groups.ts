import type { Unit } from '../units.ts';
import { readClock } from './clock.ts';
import { isDimensionLetter } from './dimension-letters.ts';
import { at, type Tokens } from './lexer.ts';
import type { Measured } from './measured.ts';
import { roleWords, throughWords } from './near-words.ts';
import type { QuantityOptions } from './quantity-options.ts';
import { readReach } from './ranges.ts';
import { afterHyphen } from './tokens.ts';

/** A factor of a group, with the word said of it ("24' WIDE by half a mile"). */
export interface Factor {
  readonly reach: Measured;
  /** The token of the role word after it, if one stands before the next joiner. */
  readonly role?: number;
}

const joiners = new Set(['x', '*', 'by', 'por']);

/** A size has three factors; what goes on beyond this is a list that was pasted. */
const mostFactors = 12;

/** The figures from token `i`: one, or several joined by x, *, by or por. Undefined when no figure begins there. */
export function readGroup(
  tokens: Tokens,
  i: number,
  options: QuantityOptions,
): { factors: Factor[]; next: number } | undefined {
  const first = readReach(tokens, i, options);
  if (!first) return undefined;
  const factors: Factor[] = [{ reach: first }];
  let last = first;
  // Once a factor is in feet and inches (10' 6" x 20' 4"), so may the next be.
  let feetInches = first.feetInches;
  for (;;) {
    const word = at(tokens, last.next).text;
    const named = roleWords.has(word) || isDimensionLetter(tokens, last.next);
    const role = named ? last.next : undefined;
    const join = afterHyphen(tokens, role === undefined ? last.next : last.next + 1); // 12-by-150
    if (factors.length === mostFactors || !joins(tokens, join) || !joinable(last)) break;
    const afterBareFactor = factors.length === 1 && last.unit === undefined;
    const factor = readFactor(tokens, afterHyphen(tokens, join + 1), {
      ...options,
      afterFeet: !feetInches,
      afterBareFactor,
      side: { number: last.number, bare: last.unit === undefined, count: factors.length, joined: true },
    });
    if (!factor) break;
    if (role !== undefined) factors[factors.length - 1] = { reach: last, role };
    feetInches ||= factor.feetInches;
    factors.push({ reach: factor });
    last = factor;
  }
  if (factors.length > 1) spread(factors, throughWords.has(at(tokens, last.next).text));
  return { factors, next: last.next };
}

function joins(tokens: Tokens, i: number): boolean {
  const join = at(tokens, i);
  if (!joiners.has(join.text)) return false;
  // In "3x 10x20 ft" the 3x counts patches of 10 x 20.
  const counts = join.text === 'x' && !join.gap && at(tokens, i + 1).gap;
  return !(counts && at(tokens, i + 2).text === 'x' && !at(tokens, i + 2).gap);
}

/** Sizes are joined by x; 20 tons by 9 is not a size. */
function joinable(reach: Measured): boolean {
  return reach.unit === undefined || sizeUnits.has(reach.unit);
}

function readFactor(tokens: Tokens, i: number, options: QuantityOptions): Measured | undefined {
  if (at(tokens, i).kind === 'number' && readClock(tokens, i) !== undefined) return undefined;
  const factor = readReach(tokens, i, { ...options, afterFigure: true });
  if (!factor || joinable(factor)) return factor;
  return isAsked(tokens, i, factor, options.side)
    ? { ...factor, unit: undefined, unclear: undefined, next: i + 1 }
    : undefined;
}

/** "300 x 12 x 2 tons": a third factor is a thickness, and what follows it is what is asked for. */
function isAsked(tokens: Tokens, i: number, factor: Measured, side: QuantityOptions['side']): boolean {
  return (
    side?.count === 2 &&
    factor.unit !== undefined &&
    askedUnits.has(factor.unit) &&
    at(tokens, i).kind === 'number' &&
    factor.next === i + 2
  );
}

const askedUnits: ReadonlySet<string> = new Set(['ton', 't', 'gal', 'L']);
const sizeUnits: ReadonlySet<string> = new Set(['ft', 'in', 'yd', 'mi', 'mm', 'cm', 'm', 'km']);
const spreading: ReadonlySet<string> = new Set(['ft', 'm', 'yd']);
const thin: ReadonlySet<string> = new Set(['in', 'mm', 'cm']);

/** A bare number so many times the measured one after it, or so many times smaller, is in another unit. */
const mostAlike = 4;

/**
 * The unit after a factor covers the bare ones before it: 10 x 20 ft. Not so a thickness: inches (or mm, cm) cover only
 * the one other factor of a pair, of like size, with no role word between (18 x 24 in, not 12 x 150 x 2 in) and none for
 * a depth after (10 x 4 in deep). Of three factors, one far smaller than the rest stays bare (2 x 12 x 150 ft: the 2 is a depth). A yard joined by x is a length.
 */
function spread(factors: readonly Factor[], deep: boolean): void {
  let smallest = Number.POSITIVE_INFINITY;
  for (const { reach } of factors) smallest = Math.min(smallest, reach.number);
  let unit: Unit | undefined;
  let number = 0;
  for (let k = factors.length - 1; k >= 0; k--) {
    const { reach, role } = factors[k]!;
    if (reach.unclear === 'yd') reach.unclear = undefined;
    if (reach.unit !== undefined) {
      unit = reach.unit;
      number = reach.number;
    } else if (unit !== undefined) {
      const pair = factors.length === 2;
      const fits = thin.has(unit)
        ? pair && !deep && role === undefined && alike(number, reach.number)
        : spreading.has(unit) && (pair || reach.number > smallest || reach.number * mostAlike > number);
      if (fits) reach.unit = unit;
    }
  }
}

function alike(a: number, b: number): boolean {
  return a <= mostAlike * b && b <= mostAlike * a;
}
