import type { Unit } from '../units.ts';
import type { Figure } from './reading.ts';

/** A number without its unit, up to the token `next`. */
export interface NumberRead {
  readonly number: number;
  readonly next: number;
  readonly form: 'fraction' | 'spelled' | undefined;
  /** The number as typed where it can be two: `11/2`, `3,5`. */
  readonly unclear: string | undefined;
  readonly about: boolean;
}

export function numberRead(
  number: number,
  next: number,
  form?: NumberRead['form'],
  unclear?: string,
  about = false,
): NumberRead {
  return { number, next, form, unclear, about };
}

/** A figure in the making, over the tokens from `start` up to `next`: with its unit or bare, and with what is said of it. */
export interface Measured {
  start: number;
  next: number;
  number: number;
  unit: Unit | undefined;
  unclear: string | undefined;
  form: Figure['form'];
  about: boolean;
  /** 5 ft 6 in, read as one length. */
  feetInches: boolean;
  low: number | undefined;
  high: number | undefined;
  bound: Figure['bound'];
  trend: Figure['trend'];
  parts: readonly [number, number] | undefined;
  group: number | undefined;
  index: number | undefined;
}

export function measured(start: number, next: number, number: number, unit?: Unit, unclear?: string): Measured {
  return {
    start,
    next,
    number,
    unit,
    unclear,
    form: undefined,
    about: false,
    feetInches: false,
    low: undefined,
    high: undefined,
    bound: undefined,
    trend: undefined,
    parts: undefined,
    group: undefined,
    index: undefined,
  };
}

type Draft = { -readonly [K in keyof Figure]: Figure[K] };

/** The figure itself, at its place in the text. What is not said is left out. */
export function toFigure(m: Measured, place: Figure['at']): Figure {
  const figure: Draft = { kind: 'figure', number: m.number, at: place };
  if (m.low !== undefined) figure.low = m.low;
  if (m.high !== undefined) figure.high = m.high;
  if (m.unit !== undefined) figure.unit = m.unit;
  if (m.unclear !== undefined) figure.unclear = m.unclear;
  if (m.about) figure.about = true;
  if (m.bound !== undefined) figure.bound = m.bound;
  if (m.group !== undefined) figure.group = m.group;
  if (m.index !== undefined) figure.index = m.index;
  if (m.trend !== undefined) figure.trend = m.trend;
  if (m.form !== undefined) figure.form = m.form;
  if (m.parts !== undefined) figure.parts = m.parts;
  return figure;
}
