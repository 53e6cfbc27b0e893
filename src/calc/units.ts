import type { Dimension } from './dimension.ts';

/**
 * Units as data. The base is inch, pound and second, so that a limit written in feet and inches is held exactly;
 * `size` is the unit in base units, as a fraction [over, under] where a single number would not be exact.
 * Sizes: NIST Handbook 44 (2023) Appendix C: yard 0.9144 m, pound 0.45359237 kg, gallon 231 in3, short ton 2,000 lb.
 * `shown` is false for a unit that is read but never answered in.
 */
const inch = 25.4; // mm
const pound = 0.45359237; // kg
const cubicMetre = 1000 / inch; // inches in a metre

export const units = {
  in: length([1, 1]),
  ft: length([12, 1]),
  yd: length([36, 1]),
  mi: length([63360, 1]),
  mm: length([1, inch]),
  cm: length([10, inch]),
  m: length([1000, inch]),
  km: length([1_000_000, inch]),

  ft2: unit('area', [144, 1]),
  yd2: unit('area', [1296, 1]),
  m2: unit('area', [1_000_000, inch ** 2]),
  acre: read('area', [6_272_640, 1]),
  ha: read('area', [1e10, inch ** 2]),

  ft3: unit('volume', [1728, 1]),
  yd3: unit('volume', [46656, 1]),
  m3: unit('volume', [cubicMetre ** 3, 1]),
  gal: unit('volume', [231, 1]),
  L: unit('volume', [1_000_000, inch ** 3]),

  lb: unit('mass', [1, 1]),
  ton: unit('mass', [2000, 1]),
  kg: unit('mass', [1, pound]),
  t: unit('mass', [1000, pound]),

  'lb/ft3': unit('density', [1, 1728]),
  'kg/m3': unit('density', [inch ** 3, pound * 1e9]),
  'lb/yd2/in': unit('density', [1, 1296]),
  'kg/m2/mm': unit('density', [inch ** 3, pound * 1e6]),
  'lb/gal': unit('density', [1, 231]),
  'kg/L': unit('density', [inch ** 3, pound * 1e6]),
  'kg/m2/cm': read('density', [inch ** 3, pound * 1e7]),
  't/m3': read('density', [inch ** 3, pound * 1e6]),
  'ton/yd3': read('density', [2000, 46656]),

  'lb/yd2': unit('spread', [1, 1296]),
  'kg/m2': unit('spread', [inch ** 2, pound * 1e6]),
  'ton/yd2': read('spread', [2000, 1296]),

  'gal/yd2': unit('rate', [231, 1296]),
  'L/m2': unit('rate', [1, inch]),
  'gal/ft2': read('rate', [231, 144]),

  mph: unit('speed', [63360, 3600]),
  'km/h': unit('speed', [1_000_000, inch * 3600]),
  'ft/min': unit('speed', [12, 60]),
  'm/min': unit('speed', [1000, inch * 60]),

  'gal/min': unit('flow', [231, 60]),
  'L/min': unit('flow', [1_000_000, inch ** 3 * 60]),

  'ton/h': unit('output', [2000, 3600]),
  't/h': unit('output', [1000, pound * 3600]),

  'yd2/h': unit('area-rate', [1296, 3600]),
  'm2/h': unit('area-rate', [1_000_000, inch ** 2 * 3600]),

  s: unit('time', [1, 1]),
  min: unit('time', [60, 1]),
  h: unit('time', [3600, 1]),

  'ft/in': unit('run', [12, 1]),
  'm/mm': unit('run', [1000, 1]),

  degF: unit('temperature', [1, 1]),
  degC: { ...unit('temperature', [9, 5]), zero: 32 },

  deg: unit('angle', [1, 1]),
  '%': unit('ratio', [1, 100]),
  '1': unit('count', [1, 1]),

  USD: unit('money', [1, 1]),
  'USD/h': unit('wage', [1, 3600]),
  'USD/ton': unit('price', [1, 2000]),
  'USD/t': unit('price', [pound, 1000]),
} as const;

export type Unit = keyof typeof units;

/** The units that measure a dimension: a length can be said in feet, never in tons. */
export type UnitOf<D extends Dimension> = UnitsByDimension[D];

type UnitsByDimension = {
  [D in Dimension]: { [U in Unit]: (typeof units)[U]['dimension'] extends D ? U : never }[Unit];
};

export interface UnitRow<D extends Dimension = Dimension> {
  readonly dimension: D;
  readonly size: readonly [over: number, under: number];
  readonly shown: boolean;
  /** Where the unit's zero lies on the base scale (degC only). */
  readonly zero?: number;
}

function unit<D extends Dimension>(dimension: D, size: readonly [number, number]): UnitRow<D> {
  return { dimension, size, shown: true };
}
function length(size: readonly [number, number]): UnitRow<'length'> {
  return unit('length', size);
}
function read<D extends Dimension>(dimension: D, size: readonly [number, number]): UnitRow<D> {
  return { dimension, size, shown: false };
}

/** One row of the table, typed loosely: for code that meets a unit only at run time. */
export function unitRow(name: Unit): UnitRow {
  return units[name];
}

const metric = new Set<Unit>(
  'mm cm m km m2 ha m3 L kg t kg/m3 kg/m2/mm kg/L kg/m2/cm t/m3 kg/m2 L/m2 km/h m/min L/min t/h m2/h m/mm degC USD/t'.split(
    ' ',
  ) as Unit[],
);
const neither = new Set<Unit>(['s', 'min', 'h', 'deg', '%', '1', 'USD', 'USD/h']);

/** The system a unit belongs to; undefined for hours, percent and other units that both share. */
export function systemOf(unit: Unit): 'us' | 'metric' | undefined {
  return neither.has(unit) ? undefined : metric.has(unit) ? 'metric' : 'us';
}

/** True when `name` is a unit of the table. */
export function isUnit(name: string): name is Unit {
  return Object.hasOwn(units, name);
}
