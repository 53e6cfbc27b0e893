import type fc from 'fast-check';
import type { Unit } from '../../src/calc/units.ts';
import {
  counts,
  dollars,
  feet,
  gallons,
  gallonsAMinute,
  inches,
  milesAnHour,
  minutes,
  percent,
  rates,
  type Spelled,
  tons,
} from './spelled.ts';

/** A kind of question: what is asked, the facts it takes with the words that tell their roles, and the sum by hand. */
export interface Asking {
  readonly quantity: string;
  readonly unit: Unit;
  readonly asks: readonly string[];
  readonly facts: Readonly<
    Record<string, { readonly figure: fc.Arbitrary<Spelled>; readonly roles: readonly string[] }>
  >;
  /** The answer, by a formula written here and nowhere else. */
  readonly sum: (facts: Readonly<Record<string, number>>) => number;
}

const length = { figure: feet(20, 3000), roles: ['# long', 'length #', '# in length', 'length of #'] };
const width = { figure: feet(6, 19), roles: ['# wide', 'width #', '# in width', 'width of #'] };
const depth = { figure: inches(4, 32), roles: ['# deep', '# thick', 'depth #', 'depth of #', '# in depth'] };
const bar = { figure: feet(6, 16), roles: ['# bar', 'spray bar #', '# spray bar', 'bar width #'] };
const sprayed = { figure: rates(3, 20), roles: ['at #', 'rate #', 'spraying #', 'shooting #'] };
const speed = { figure: milesAnHour(20, 70), roles: ['posted #', '# speed limit', 'posted speed #', 'speed #'] };
const load = { figure: tons(8, 22), roles: ['# loads', '# trucks', '# a truck', '# per load'] };

const squareYards = (a: number, b: number): number => (a * b) / 9;
/** 110 lb a square yard and inch, 2,000 lb to the ton. */
const tonsIn = (long: number, wide: number, deep: number): number => (squareYards(long, wide) * deep * 110) / 2000;
/** MUTCD (11th ed.) table 6B-4: W S² ÷ 60 to 40 mph, W S from 45. */
const merging = (offset: number, mph: number): number => (mph <= 40 ? (offset * mph * mph) / 60 : offset * mph);
/** MUTCD (11th ed.) table 6B-2, feet by mph. */
const sightDistance: Readonly<Record<number, number>> = {
  20: 115,
  25: 155,
  30: 200,
  35: 250,
  40: 305,
  45: 360,
  50: 425,
  55: 495,
  60: 570,
  65: 645,
  70: 730,
};

export const askings: readonly Asking[] = [
  {
    quantity: 'premix-mass',
    unit: 'ton',
    asks: ['how many tons', 'how much mix do I need', 'tons of premix', 'how many tons of mix'],
    facts: { length, width, depth },
    sum: ({ length, width, depth }) => tonsIn(length!, width!, depth!),
  },
  {
    quantity: 'premix-order',
    unit: 'ton',
    asks: ['how much mix do I order', 'how many tons should I order', 'tons to order'],
    facts: { length, width, depth },
    sum: ({ length, width, depth }) => tonsIn(length! + 4, width!, depth!) * 1.05,
  },
  {
    quantity: 'patch-area',
    unit: 'yd2',
    asks: ['how many square yards', 'what is the area of the patch', 'area of a patch'],
    facts: { length, width },
    sum: ({ length, width }) => squareYards(length!, width!),
  },
  {
    quantity: 'truck-count',
    unit: '1',
    asks: ['how many loads', 'how many truckloads do we need'],
    facts: { length, width, depth, load },
    sum: ({ length, width, depth, load }) => Math.ceil(tonsIn(length!, width!, depth!) / load! - 1e-9),
  },
  {
    quantity: 'lift-count',
    unit: '1',
    asks: ['how many lifts', 'number of lifts'],
    facts: { depth },
    sum: ({ depth }) => Math.ceil(depth! - 1e-9),
  },
  {
    quantity: 'load-length',
    unit: 'ft',
    asks: ['how far will one load go', 'how many feet does a load cover', 'how far does a load go'],
    facts: { width, depth, load },
    sum: ({ width, depth, load }) => (load! * 2000 * 9) / (width! * depth! * 110),
  },
  {
    quantity: 'placed-depth',
    unit: 'in',
    asks: ['how thick did we lay it', 'what thickness did we lay', 'how thick is that'],
    facts: {
      tons: { figure: tons(10, 60), roles: ['put down #', 'placed #', '# placed', 'laid #'] },
      length: { ...length, figure: feet(200, 600) },
      width: { ...width, figure: feet(8, 12) },
    },
    sum: ({ tons, length, width }) => (tons! * 2000) / (squareYards(length!, width!) * 110),
  },
  {
    quantity: 'tack-volume',
    unit: 'gal',
    asks: ['how many gallons of tack', 'how much tack do I need', 'tack needed'],
    facts: { length, width, sprayed },
    sum: ({ length, width, sprayed }) => squareYards(length!, width!) * sprayed!,
  },
  {
    quantity: 'tack-run-length',
    unit: 'ft',
    asks: ['how far will the tank go', 'how far does one tank of tack go'],
    facts: { tank: { figure: gallons(200, 2000), roles: ['# tank', '# in the tank', 'tank of #'] }, bar, sprayed },
    sum: ({ tank, bar, sprayed }) => (9 * tank!) / (bar! * sprayed!),
  },
  {
    quantity: 'distributor-speed',
    unit: 'ft/min',
    asks: ['how fast do I drive the distributor', 'what speed for the distributor'],
    facts: { pump: { figure: gallonsAMinute(20, 120), roles: ['pump #', '# pump', 'pumping #'] }, bar, sprayed },
    sum: ({ pump, bar, sprayed }) => (9 * pump!) / (bar! * sprayed!),
  },
  {
    quantity: 'merging-taper',
    unit: 'ft',
    asks: ['how long a merging taper', 'merging taper length', 'length of the merging taper'],
    facts: { offset: { figure: feet(8, 14), roles: ['# lane', 'lane width #', '# lane closed'] }, speed },
    sum: ({ offset, speed }) => merging(offset!, speed!),
  },
  {
    quantity: 'buffer-length',
    unit: 'ft',
    asks: ['how long a buffer', 'buffer length', 'what buffer do I need'],
    facts: { speed },
    sum: ({ speed }) => sightDistance[speed!]!,
  },
  {
    quantity: 'roller-passes',
    unit: '1',
    asks: ['how many roller passes', 'roller passes for each lift'],
    facts: {
      width,
      drum: {
        figure: inches(32 * 12, 48 * 12).map(({ value }) => ({
          value: Math.round(value) / 12,
          text: `${Math.round(value)} in`,
        })),
        roles: ['# drum', 'drum #', 'drum width #'],
      },
    },
    sum: ({ width, drum }) => Math.ceil((width! + 1 - 0.5) / (drum! - 0.5) - 1e-9) * 3,
  },
  {
    quantity: 'crown-drop',
    unit: 'in',
    asks: ['how much does the lane fall', 'crown drop'],
    facts: { width, slope: { figure: percent(1, 6), roles: ['# cross slope', 'cross slope #', 'cross slope of #'] } },
    sum: ({ width, slope }) => (width! * 12 * slope!) / 100,
  },
  {
    quantity: 'lift-thickness',
    unit: 'in',
    asks: ['how thick is each lift', 'lift thickness'],
    facts: { depth },
    sum: ({ depth }) => depth! / Math.ceil(depth! - 1e-9),
  },
  {
    quantity: 'lift-loose',
    unit: 'in',
    asks: ['how much loose do I leave', 'loose depth before rolling'],
    facts: { lift: { figure: inches(4, 8), roles: ['# rolled', '# lift', '# compacted', 'for a # lift'] } },
    sum: ({ lift }) => lift! * 1.25,
  },
  {
    quantity: 'lift-min',
    unit: 'in',
    asks: ['how thin can the lift be', 'minimum lift thickness', 'thinnest lift'],
    facts: { stone: { figure: inches(2, 8), roles: ['# stone', '# rock', 'largest stone #'] } },
    sum: ({ stone }) => stone! * 1.5,
  },
  {
    quantity: 'tack-rate',
    unit: 'gal/yd2',
    asks: ['what do I shoot', 'what rate do I spray'],
    facts: {
      left: { figure: rates(2, 8), roles: ['residual #', '# residual'] },
      residue: { figure: percent(50, 70), roles: ['# residue', 'residue #'] },
    },
    sum: ({ left, residue }) => left! / (residue! / 100),
  },
  {
    quantity: 'dump-spacing',
    unit: 'ft',
    asks: ['how far apart do we dump', 'spacing of the dumps', 'dump spacing'],
    facts: { width, depth, load },
    sum: ({ width, depth, load }) => (load! * 2000 * 9) / (width! * depth! * 110),
  },
  {
    quantity: 'material-cost',
    unit: 'USD',
    asks: ['what does the mix cost', 'cost of the mix'],
    facts: { length, width, depth, price: { figure: dollars(60, 140), roles: ['at #', '#', 'price #'] } },
    sum: ({ length, width, depth, price }) => tonsIn(length!, width!, depth!) * price!,
  },
  {
    quantity: 'queue-length',
    unit: 'ft',
    asks: ['how long is the queue', 'how far back will traffic stack up'],
    facts: {
      cars: { figure: counts(60, 900), roles: ['# cars an hour', '# vehicles an hour', '# vehicles per hour'] },
      held: { figure: minutes(2, 20), roles: ['stopped #', 'stopped for #', 'held #'] },
    },
    sum: ({ cars, held }) => (cars! * held! * 25) / 60,
  },
  {
    quantity: 'grading-time',
    unit: 'h',
    asks: ['how long will the grader take', 'grading time'],
    facts: {
      length,
      passes: { figure: counts(2, 12), roles: ['# passes', '# grader passes'] },
      speed: {
        figure: counts(2, 4).map(({ value }) => ({ value, text: `${value} mph` })),
        roles: ['at #', 'speed #', 'grader speed #'],
      },
    },
    sum: ({ length, passes, speed }) => (passes! * length!) / (speed! * 5280 * 0.6),
  },
  {
    quantity: 'windrow-height',
    unit: 'ft',
    asks: ['how high is the windrow', 'windrow height'],
    facts: { width, lift: { figure: inches(4, 8), roles: ['# lift', 'lift of #'] } },
    sum: ({ width, lift }) => Math.sqrt((width! * lift! * 1.25) / 12 / 1.5),
  },
  {
    quantity: 'device-count',
    unit: '1',
    asks: ['how many cones on the merging taper', 'number of cones for the merging taper'],
    facts: { offset: { figure: feet(8, 14), roles: ['# lane', '# lane closed'] }, speed },
    sum: ({ offset, speed }) => Math.ceil(merging(offset!, speed!) / speed! - 1e-9) + 1,
  },
  {
    quantity: 'work-length',
    unit: 'ft',
    asks: ['how long is the work space with room to turn the grader', 'work space length with room to turn the grader'],
    facts: { length: { ...length, roles: ['# long', 'length #', '# patch'] } },
    sum: ({ length }) => length! + 100,
  },
];
