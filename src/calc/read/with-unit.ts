import { type Measured, measured, type NumberRead } from './measured.ts';
import { metricUnits } from './rate-words.ts';
import type { UnitRead } from './unit.ts';

/** `figure` with what the reading of its number tells of it. */
export function said(figure: Measured, read: NumberRead, unclear: string | undefined): Measured {
  figure.form = read.form;
  figure.about = read.about;
  figure.unclear = unclear;
  return figure;
}

/** The number read, in the unit read after it. */
export function withUnit(start: number, unit: UnitRead, read: NumberRead, metric = false): Measured {
  const isMetric = metric || unit.spanish || unit.unit === 'm' || metricUnits.has(unit.unit);
  const figure = measured(start, unit.next, read.number * unit.times, unit.unit);
  return said(figure, read, unit.unclear ?? commaDoubt(read, isMetric));
}

/** `3,5` is a decimal for those who write metric or Spanish, and with a leading nought; for others it may be a list. */
export function commaDoubt(read: NumberRead, metric = false): string | undefined {
  if (!read.unclear?.includes(',')) return read.unclear;
  return metric || read.unclear.startsWith('0') ? undefined : read.unclear;
}
