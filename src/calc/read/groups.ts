import type { Unit } from '../units.ts';
import { readClock } from './clock.ts';
import { at, type Tokens } from './lexer.ts';
import { acrossWords, throughWords } from './near-words.ts';
import type { QuantityOptions } from './quantities.ts';
import { type Reach, readReach } from './ranges.ts';

/** A factor of a group, with the word said of it ("24' WIDE by half a mile"). */
export interface Factor {
  readonly reach: Reach;
  /** The token of the role word after it, if one stands before the next joiner. */
  readonly role?: number;
}

const joiners = new Set(['x', '*', 'by', 'por']);

/** The figures from token `i`: one, or several joined by x, *, by or por. Undefined when no figure begins there. */
export function readGroup(
  tokens: Tokens,
  i: number,
  options: QuantityOptions,
): { factors: Factor[]; next: number } | undefined {
  const first = readReach(tokens, i, options);
  if (!first) return undefined;
  const factors: Factor[] = [{ reach: first }];
  let next = first.next;
  for (;;) {
    const last = factors[factors.length - 1]!.reach;
    const role = acrossWords.has(at(tokens, next).text) || throughWords.has(at(tokens, next).text) ? next : undefined;
    const join = role === undefined ? next : next + 1;
    const factor = joins(tokens, join) && joinable(last) ? readFactor(tokens, join + 1, factors, options) : undefined;
    if (!factor) break;
    if (role !== undefined) factors[factors.length - 1] = { reach: last, role };
    factors.push({ reach: factor });
    next = factor.next;
  }
  return { factors: spread(factors), next };
}

function joins(tokens: Tokens, i: number): boolean {
  const join = at(tokens, i);
  if (!joiners.has(join.text)) return false;
  // In "3x 10x20 ft" the 3x counts patches of 10 x 20.
  const counts = join.text === 'x' && !join.gap && at(tokens, i + 1).gap;
  return !(counts && at(tokens, i + 2).text === 'x' && !at(tokens, i + 2).gap);
}

/** Sizes are joined by x; 20 tons by 9 is not a size. */
function joinable(reach: Reach): boolean {
  return reach.unit === undefined || sizeUnits.has(reach.unit);
}

function readFactor(tokens: Tokens, i: number, before: readonly Factor[], options: QuantityOptions): Reach | undefined {
  const head = at(tokens, i);
  if (head.kind === 'number' && readClock(tokens, i) !== undefined) return undefined;
  const last = before[before.length - 1]!.reach;
  const afterFeet = !before.some((factor) => factor.reach.feetInches);
  const bare = last.unit === undefined && before.length === 1;
  const factor = readReach(tokens, i, { ...options, afterFeet, afterBareFactor: bare, afterFigure: true });
  return factor && joinable(factor) ? factor : undefined;
}

const sizeUnits: ReadonlySet<string> = new Set(['ft', 'in', 'yd', 'mi', 'mm', 'cm', 'm', 'km']);
const spreading: ReadonlySet<string> = new Set(['ft', 'm', 'yd']);
const thin: ReadonlySet<string> = new Set(['in', 'mm', 'cm']);

/** A bare number so many times the measured one after it, or so many times smaller, is in another unit. */
const mostAlike = 4;

/**
 * The unit after a factor covers the bare ones before it: 10 x 20 ft. Not so a thickness: inches (or mm, cm) cover only
 * the one other factor of a pair, of like size, with no role word between (18 x 24 in, not 12 x 150 x 2 in). Of three
 * factors, one far smaller than the rest stays bare (2 x 12 x 150 ft: the 2 is a depth).
 */
function spread(factors: readonly Factor[]): Factor[] {
  const smallest = Math.min(...factors.map((factor) => factor.reach.number));
  let unit: Unit | undefined;
  let measured = 0;
  const out = [...factors];
  for (let k = factors.length - 1; k >= 0; k--) {
    const { reach, role } = factors[k]!;
    if (reach.unit !== undefined) {
      unit = reach.unit;
      measured = reach.number;
    } else if (
      unit !== undefined &&
      covers(unit, measured, reach.number, factors.length, role !== undefined, smallest)
    ) {
      out[k] = { ...factors[k]!, reach: { ...reach, unit } };
    }
  }
  return factors.length === 1 ? out : out.map(clearYards);
}

function covers(unit: Unit, measured: number, number: number, count: number, role: boolean, smallest: number): boolean {
  if (thin.has(unit)) return count === 2 && !role && number <= mostAlike * measured && measured <= mostAlike * number;
  if (!spreading.has(unit)) return false;
  return count < 3 || number > smallest || number * mostAlike > measured;
}

/** A yard joined by x is a yard of length. */
function clearYards(factor: Factor): Factor {
  if (factor.reach.unclear !== 'yd') return factor;
  const { unclear: _, ...reach } = factor.reach;
  return { ...factor, reach };
}
