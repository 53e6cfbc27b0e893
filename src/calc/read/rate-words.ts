import type { Unit } from '../units.ts';

/**
 * What units joined by "per" come to, where that is not simply a unit of the same name. A rate per "yard" is per square
 * yard for what is spread and per cubic yard for what is heaped; pounds "per inch" are pounds per square yard per inch.
 */
export const joined: Readonly<Record<string, { unit: Unit; unclear?: string; times?: number }>> = {
  'gal/yd': { unit: 'gal/yd2', unclear: 'gal/yd' },
  'g/yd2': { unit: 'gal/yd2' },
  'g/m2': { unit: 'kg/m2', times: 0.001 },
  'L/m': { unit: 'L/m2', unclear: 'L/m' },
  'lb/yd': { unit: 'lb/yd2', unclear: 'lb/yd' },
  'lb/yd/in': { unit: 'lb/yd2/in' },
  'lb/in': { unit: 'lb/yd2/in', unclear: 'lb/in' },
  'lb/in/yd2': { unit: 'lb/yd2/in' },
  'lb/in/yd': { unit: 'lb/yd2/in' },
  'kg/mm/m2': { unit: 'kg/m2/mm' },
  'ton/yd': { unit: 'ton/yd3', unclear: 'ton/yd' },
  't/h': { unit: 't/h', unclear: 't' },
  'USD/t': { unit: 'USD/t', unclear: 't' },
  'mi/h': { unit: 'mph' },
  'in/ft': { unit: '%', times: 100 / 12 },
  'ft/ft': { unit: '%', times: 100 },
  'mm/m': { unit: '%', times: 0.1 },
  'cm/m': { unit: '%', times: 1 },
  'm/m': { unit: '%', times: 100 },
};

/** Words that join two units into a rate: gallons PER minute, tons AN hour. The longest first. */
export const perWords: readonly (readonly string[])[] = [
  ['for', 'every'],
  ['for', 'each'],
  ['to', 'the'],
  ['per', 'each'],
  ['per', 'every'],
  ['per'],
  ['por'],
  ['an'],
  ['a'],
  ['each'],
  ['every'],
];

/** Words after "per inch" that belong to it: per 1-inch depth, per inch of thickness. */
export const depthWords = new Set(['thick', 'thickness', 'depth', 'deep']);

/** Metric units: one of them in a text tells that its m is a metre and its t a tonne. */
export const metricUnits: ReadonlySet<string> = new Set(
  'mm cm km m2 ha m3 L kg kg/m3 kg/m2/mm kg/L kg/m2/cm t/m3 kg/m2 L/m2 km/h m/min L/min m2/h m/mm degC'.split(' '),
);
