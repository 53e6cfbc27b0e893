import { convert } from '../calc/quantity.ts';
import type { Figure } from '../calc/read/reading.ts';
import type { Unit } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { Token } from './token.ts';

/** A ratio whose parts are named, as the share that a record reads out of it: "3 parts water to 1 part tack" is 25 % tack. */
export function shareIn(figure: Figure, names: Names, record: QuantityRecord): Figure {
  const shareOf = names && figure.parts && record.shareOf;
  if (!names || !figure.parts || !shareOf) return figure;
  const [one, other] = figure.parts;
  const at = names.findIndex((name) => name !== undefined && shareOf.includes(name));
  const part = at === 1 || (at < 0 && names[0] !== undefined) ? other : one;
  const { form: _, parts: __, ...rest } = figure;
  return { ...rest, number: (100 * part) / (one + other), unit: '%' };
}

type Names = (Token & { kind: 'figure' })['names'];

/** The figure as its role has it: a ratio becomes the one number it stands for, two thirds a share in per cent. */
export function asRole(figure: Figure, { parts: reading, units }: QuantityRecord): Figure {
  if (units.us === '%' && figure.unit === undefined && figure.number > 0 && figure.number < 1)
    return { ...figure, number: figure.number * 100 };
  const { parts } = figure;
  if (figure.form !== 'ratio' || !parts || !reading) return figure;
  return { ...figure, number: reading === 'share' ? (100 * parts[0]) / (parts[0] + parts[1]) : parts[0] / parts[1] };
}

/** True for a figure of a size that people give for a quantity. */
export function isPlausible(figure: Pick<Figure, 'number'>, unit: Unit, { plausible }: QuantityRecord): boolean {
  if (!plausible) return true;
  const { min, max } = plausible;
  return (
    figure.number >= convert(min.number, min.unit, unit) * (1 - 1e-9) &&
    figure.number <= convert(max.number, max.unit, unit) * (1 + 1e-9)
  );
}

/** So many times beyond what people give is no slip of the tongue. */
const far = 5;

/** True for a figure far from any size that people give for a quantity. */
export function isFarFrom(figure: Figure, unit: Unit, { plausible, dimension }: QuantityRecord): boolean {
  if (!plausible || dimension === 'temperature') return false;
  const [min, max] = [plausible.min, plausible.max].map((end) => convert(end.number, end.unit, unit)) as [
    number,
    number,
  ];
  return figure.number > far * max || figure.number < min / far;
}
