import { type Rounding, roundedText, roundTo, trimmedText, trimZeros, usualRounding } from '../rounding.ts';
import type { Unit } from '../units.ts';

/** A number as it is written, before its unit; a decimal point and no thousands separators. */
export interface Numeral {
  readonly text: string;
  /** The decimal to stand beside a fraction of an inch. */
  readonly exact?: string;
  /** True when `text` is a rounding that has to be said. */
  readonly about?: boolean;
}

/** How a number is to be written. */
export interface NumeralOptions {
  /** As the quantity's record has it for this unit; the unit's usual rounding when absent. */
  readonly rounding?: Rounding;
  /** The asker's own figure, in the unit typed: echoed, not rounded. */
  readonly given?: boolean;
  /** Inches as a decimal alone, to stand inside a formula. */
  readonly plain?: boolean;
}

/** A number of `unit` as it is written. Throws RangeError when it is not finite or too large to write out. */
export function numeralOf(x: number, unit: Unit, { rounding, given, plain }: NumeralOptions): Numeral {
  if (given) return { text: echo(x, unit, plain) };
  const usual = rounding && (rounding !== 'eighths' || unit === 'in') ? rounding : usualRounding[unit];
  if (usual === 'eighths') return plain ? { text: trimmedText(x, 3) } : inEighths(x);
  const text = roundedText(x, usual);
  return { text: unit === '1' ? trimZeros(text) : text };
}

function echo(x: number, unit: Unit, plain: boolean | undefined): string {
  const fraction = unit === 'in' && !plain ? fractionOf(x, 16) : undefined;
  if (fraction !== undefined) return fraction;
  const text = trimmedText(x, 6);
  return unit.startsWith('USD') && /\.\d$/.test(text) ? `${text}0` : text;
}

function inEighths(x: number): Numeral {
  const exact = trimmedText(x, 3);
  if (Math.abs(Number(exact)) < 1 / 8) return { text: exact };
  const eighths = Number(roundTo(x * 8, 0));
  const text = fractionText(eighths, 8);
  if (Number(exact) * 8 !== eighths) return { text, exact, about: true };
  return exact === text ? { text } : { text, exact };
}

/** Feet as feet and inches, `[5, '6 1/2']`; undefined when it is no such figure. Inches are whole, or eighths where those are the rounding. */
export function feetAndInches(
  feet: number,
  { rounding, given }: NumeralOptions,
): readonly [feet: string, inches: string] | undefined {
  const parts = given ? 16 : rounding === 'eighths' ? 8 : 1;
  const inches = Math.abs(feet) * 12;
  const whole = given ? wholeParts(inches, parts) : Number(roundTo(inches * parts, 0));
  if (whole === undefined || (whole === 0 && feet !== 0)) return undefined;
  const perFoot = 12 * parts;
  return [roundTo(Math.trunc(whole / perFoot), 0), fractionText(whole % perFoot, parts)];
}

/** A number as a fraction when it is a whole number of parts, float dust forgiven. */
function fractionOf(x: number, parts: number): string | undefined {
  const whole = wholeParts(x, parts);
  return whole === undefined ? undefined : fractionText(whole, parts);
}

function wholeParts(x: number, parts: number): number | undefined {
  const whole = Math.round(x * parts);
  return Math.abs(x * parts - whole) <= 1e-9 * Math.max(1, Math.abs(whole)) && (whole !== 0 || x === 0)
    ? whole
    : undefined;
}

/** 12 eighths are `1 1/2`. */
function fractionText(count: number, parts: number): string {
  const size = Math.abs(count);
  const rest = size % parts;
  const whole = roundTo((size - rest) / parts, 0);
  const sign = count < 0 ? '-' : '';
  if (rest === 0) return count === 0 ? '0' : sign + whole;
  const shared = greatestShared(rest, parts);
  const fraction = `${rest / shared}/${parts / shared}`;
  return sign + (size < parts ? fraction : `${whole} ${fraction}`);
}

const greatestShared = (a: number, b: number): number => (b === 0 ? a : greatestShared(b, a % b));
