import type { Dimension } from './dimension.ts';
import { coolingTime } from './heat.ts';
import { fromBase, toBase } from './quantity.ts';

/** Fixed numbers of a model, by name, in SI units; they come with the formula that calls it. */
export type Parameters = Readonly<Record<string, number>>;

/** A function too long to be written as a formula. */
export interface Model {
  /** What it works from, in this order, and whether the result rises (1) or falls (-1) with each. */
  readonly takes: readonly (readonly [dimension: Dimension, sense: 1 | -1])[];
  readonly gives: Dimension;
  readonly parameters: readonly string[];
  /** Works it out, all in base units. NaN when it has no answer. */
  readonly run: (inputs: readonly number[], parameters: Parameters) => number;
}

/** Boltzmann's constant of radiation, W/(m2 K4): CODATA 2018. */
const radiation = 5.670374419e-8;
const zero = 273.15;

export const models = {
  /**
   * Time until the mean of a layer on a like base cools to a stop: thickness, start, base, air, wind, stop. The film is
   * `stillFilm + windFilm × wind ^ windPower` (wind in m/s), and radiation to the air at `emissivity` is added to it.
   */
  'cooling-time': {
    takes: [
      ['length', 1],
      ['temperature', 1],
      ['temperature', 1],
      ['temperature', 1],
      ['speed', -1],
      ['temperature', -1],
    ],
    gives: 'time',
    parameters: ['conductivity', 'heatCapacity', 'density', 'stillFilm', 'windFilm', 'windPower', 'emissivity'],
    run: ([thickness, start, base, air, wind, stop], p) => {
      const celsius = (degrees: number): number => fromBase(degrees, 'degC');
      const sky = celsius(air!) + zero;
      const still = p.stillFilm! + p.windFilm! * (fromBase(wind!, 'm/min') / 60) ** p.windPower!;
      const film = (surface: number): number => {
        const hot = surface + zero;
        return still + p.emissivity! * radiation * (hot * hot + sky * sky) * (hot + sky);
      };
      const layer = {
        thickness: fromBase(thickness!, 'm'),
        start: celsius(start!),
        base: celsius(base!),
        air: celsius(air!),
        matter: { conductivity: p.conductivity!, heatCapacity: p.heatCapacity!, density: p.density! },
        film,
      };
      return toBase(coolingTime(layer, celsius(stop!)), 's');
    },
  },
} as const satisfies Record<string, Model>;

export type ModelName = keyof typeof models;

/** One model, typed loosely: for code that meets a name only at run time. */
export const modelNamed = (name: ModelName): Model => models[name];
