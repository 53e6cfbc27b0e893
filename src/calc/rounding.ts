import { roundUp } from './quantity.ts';
import type { Unit } from './units.ts';

/** How a figure is worded: `eighths` of an inch, `up` to the next whole one, or to so many decimals. */
export type Rounding = 'eighths' | 'up' | 'whole' | 'tenth' | 'hundredth' | 'thousandth';

/** How a unit is rounded where its quantity says nothing else. */
export const usualRounding: Readonly<Record<Unit, Rounding>> = {
  in: 'eighths',
  ft: 'whole',
  yd: 'whole',
  mi: 'tenth',
  mm: 'whole',
  cm: 'tenth',
  m: 'tenth',
  km: 'tenth',
  ft2: 'whole',
  yd2: 'whole',
  m2: 'whole',
  acre: 'hundredth',
  ha: 'hundredth',
  ft3: 'tenth',
  yd3: 'tenth',
  m3: 'tenth',
  gal: 'up',
  L: 'up',
  lb: 'whole',
  ton: 'tenth',
  kg: 'whole',
  t: 'tenth',
  'lb/ft3': 'tenth',
  'kg/m3': 'whole',
  'lb/yd2/in': 'tenth',
  'kg/m2/mm': 'hundredth',
  'lb/gal': 'hundredth',
  'kg/L': 'hundredth',
  'kg/m2/cm': 'tenth',
  't/m3': 'hundredth',
  'ton/yd3': 'hundredth',
  'lb/yd2': 'tenth',
  'kg/m2': 'tenth',
  'ton/yd2': 'thousandth',
  'gal/yd2': 'hundredth',
  'L/m2': 'hundredth',
  'gal/ft2': 'thousandth',
  mph: 'tenth',
  'km/h': 'tenth',
  'ft/min': 'whole',
  'm/min': 'tenth',
  'gal/min': 'tenth',
  'L/min': 'whole',
  'ton/h': 'tenth',
  't/h': 'tenth',
  'yd2/h': 'whole',
  'm2/h': 'whole',
  s: 'whole',
  min: 'whole',
  h: 'tenth',
  'ft/in': 'tenth',
  'm/mm': 'hundredth',
  degF: 'whole',
  degC: 'whole',
  deg: 'whole',
  '%': 'whole',
  '1': 'hundredth',
  USD: 'hundredth',
  'USD/h': 'hundredth',
  'USD/ton': 'hundredth',
  'USD/t': 'hundredth',
};

/** Below this a figure is float dust and worded as nothing. */
const dust = 1e-6;
/** Digits that hold after a chain of steps in floating point; what is past them is dust. */
const surely = 14;
/** Farther than this from a half, dust does not decide which way a figure below `plainly` is rounded. */
const nearHalf = 1e-3;
/** Whole numbers below this are exact with any decimals a figure is worded with. */
const plainly = 1e9;

/**
 * Decimal text of `x` with so many decimals, a half going away from zero as the decimal number is written: 1.005 is 1.01,
 * 0.615 is 0.62, -2.5 is -3. Never -0. Throws RangeError when `x` is not finite or too large to write out.
 */
export function roundTo(x: number, decimals: number): string {
  if (!Number.isFinite(x)) throw new RangeError(`${x} is not a figure that can be put into words`);
  // A whole number is written out as it stands: half of all figures are, and the way round by text takes ten times as long.
  if (Number.isInteger(x) && Math.abs(x) < plainly) return (x + 0).toFixed(decimals);
  const units = wholeUnits(Math.abs(x), decimals);
  // So large a figure has no decimals that are sure.
  if (units >= 1e20 && decimals > 0) return roundTo(x, 0);
  if (units >= 1e20) throw new RangeError(`${x} is too large a figure to put into words`);
  const text = (units / 10 ** decimals).toFixed(decimals);
  return x < 0 && units > 0 ? `-${text}` : text;
}

/** How many units of the last decimal a figure comes to, by its decimal digits where they decide: near a half. */
function wholeUnits(x: number, decimals: number): number {
  const scaled = x * 10 ** decimals;
  if (scaled < plainly && Math.abs((scaled % 1) - 0.5) > nearHalf) return Math.round(scaled);
  const [digits, exponent] = x.toExponential(surely - 1).split('e') as [string, string];
  return Math.round(Number(`${digits}e${Number(exponent) + decimals}`));
}

/**
 * Decimal text of a computed figure. What is not nothing is never worded 0: it gets the decimals that show it. A rate
 * under a tenth gets thousandths where it has them, since half a hundredth is over a twentieth part of it.
 */
export function roundedText(x: number, rounding: Exclude<Rounding, 'eighths'>): string {
  if (rounding === 'up') return roundTo(Math.abs(x) < dust ? 0 : roundUp(x), 0);
  if (rounding !== 'hundredth' || Math.abs(x) >= 0.1) return neverNothing(x, decimalsOf[rounding]);
  return neverNothing(x, 3).replace(/(\.\d\d)0$/, '$1');
}

const decimalsOf = { whole: 0, tenth: 1, hundredth: 2, thousandth: 3 };

/** Decimal text with no more decimals than it needs, and at most so many, unless it takes more to show anything. */
export function trimmedText(x: number, most: number): string {
  return trimZeros(neverNothing(x, most));
}

/** Takes the noughts off the end of decimals: 2.50 is 2.5, 3.00 is 3. */
export function trimZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0{1,20}$/, '') : text;
}

function neverNothing(x: number, decimals: number): string {
  const text = roundTo(x, decimals);
  return Number(text) === 0 && Math.abs(x) >= dust ? neverNothing(x, decimals + 1) : text;
}
