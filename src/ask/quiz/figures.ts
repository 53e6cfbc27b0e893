import { isUnit } from '../../calc/units.ts';
import { english } from '../../calc/wording/english.ts';
import type { QuizItem } from '../reply.ts';

/** A unit as people write it: "sq yd", "tons". Empty for a count. */
export const unitInWords = (unit: string | undefined): string =>
  unit !== undefined && unit !== '1' && isUnit(unit) ? english.units[unit][1].replace(/# ?/, '').trim() : '';

/** The key of an item to fill in, to as many places as its tolerance bears: "30.6 tons". */
export function keyInWords({ key, tolerance = 0, unit }: QuizItem): string {
  return `${places(Number(key), tolerance)} ${unitInWords(unit)}`.trim();
}

/** What counts as right, from least to most; undefined where only the key does. */
export function endsInWords({ key, tolerance = 0 }: QuizItem): readonly [string, string] | undefined {
  if (!tolerance) return undefined;
  return [places(Number(key) - tolerance, tolerance), places(Number(key) + tolerance, tolerance)];
}

/** Most places after the point that a key is printed with. */
const most = 6;

function places(number: number, tolerance: number): string {
  if (tolerance <= 0) return String(number);
  const digits = Math.min(most, Math.max(0, Math.ceil(-Math.log10(tolerance / 2))));
  // 0.975 lies a hair under itself: what is half a step goes up, as it does in the working.
  const rounded = Math.round(number * 10 ** digits * (1 + 1e-12)) / 10 ** digits;
  const [whole = '', rest] = rounded.toFixed(digits).split('.');
  const trimmed = rest?.replace(/0+$/, '');
  return whole.replace(/\B(?=(?:\d{3}){1,7}(?!\d))/g, ',') + (trimmed ? `.${trimmed}` : '');
}
