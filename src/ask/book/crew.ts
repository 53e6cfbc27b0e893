import { toBase } from '../../calc/quantity.ts';
import type { Engine } from '../engine.ts';
import { type Priced, pricesOf, ratesOf } from './machine-rates.ts';
import type { Entry, Sheet } from './sheet.ts';
import type { Totals } from './totals.ts';

/** Hours of a person or a machine, in seconds, and what they come to, in dollars, where a rate is known. */
export interface WorkedLine {
  readonly name: string;
  readonly hours: number;
  readonly cost?: number;
}

export interface Crew {
  readonly people: readonly WorkedLine[];
  readonly machines: readonly WorkedLine[];
  /** Planned: hours of everybody as told, and the time that the blade and the rollers move. */
  readonly planned: { readonly labor?: number; readonly grading?: number; readonly rolling?: number };
  /** The machines told of the job, by the schedule. */
  readonly priced: readonly Priced[];
  /** What is spent so far, in dollars, as far as prices and rates are known. */
  readonly spent: Spent;
}

export interface Spent {
  readonly material?: number;
  readonly labor?: number;
  readonly equipment?: number;
  readonly tack?: number;
  /** Only when nothing that was written down lacks its price. */
  readonly total?: number;
  /** What was written down without a price: people, mix, or machines by name. */
  readonly unpriced: { readonly mix: boolean; readonly labor: boolean; readonly machines: readonly string[] };
}

/** Hours and cost of a job, planned and written down, by what it was told of prices and by its schedule of rates. */
export function crewOf(engine: Engine, sheet: Sheet, totals: Totals): Crew {
  const rates = ratesOf(sheet);
  const told = (id: string): number | undefined => totals.job.get(id)?.value;
  const people = worked(sheet.hours, 'who', (entry) => baseOf(entry, 'labor-rate') ?? told('labor-rate'));
  const machines = worked(sheet.hours, 'machine', (entry) => {
    const own = baseOf(entry, 'equipment-rate');
    if (own !== undefined || !rates) return own;
    const [priced, ...others] = pricesOf(entry.text('machine')!, rates, engine);
    return priced && 'row' in priced && others.length === 0
      ? toBase(priced.count * priced.row.rate, 'USD/h')
      : undefined;
  });
  const sum = (id: 'grading-time' | 'rolling-time-total') => totals.sums[id]?.value;
  const [labor, grading, rolling] = [told('labor-hours'), sum('grading-time'), sum('rolling-time-total')];
  return {
    people,
    machines,
    planned: {
      ...(labor === undefined ? {} : { labor }),
      ...(grading === undefined ? {} : { grading }),
      ...(rolling === undefined ? {} : { rolling }),
    },
    priced: rates && sheet.machines ? pricesOf(sheet.machines, rates, engine) : [],
    spent: spentOf(people, machines, totals.laid, told('material-price'), told('tack-cost')),
  };
}

function spentOf(
  people: readonly WorkedLine[],
  machines: readonly WorkedLine[],
  laid: number,
  price: number | undefined,
  tack: number | undefined,
): Spent {
  const material = laid > 0 && price !== undefined ? laid * price : undefined;
  const labor = costOf(people);
  const equipment = costOf(machines);
  const unpriced = {
    mix: laid > 0 && price === undefined,
    labor: people.some(({ cost }) => cost === undefined),
    machines: machines.filter(({ cost }) => cost === undefined).map(({ name }) => name),
  };
  const parts = [material, labor, equipment, laid > 0 ? tack : undefined].filter((part) => part !== undefined);
  const whole = !unpriced.mix && !unpriced.labor && unpriced.machines.length === 0 && parts.length > 0;
  return {
    ...(material === undefined ? {} : { material }),
    ...(labor === undefined ? {} : { labor }),
    ...(equipment === undefined ? {} : { equipment }),
    ...(laid > 0 && tack !== undefined ? { tack } : {}),
    ...(whole ? { total: parts.reduce((sum, part) => sum + part, 0) } : {}),
    unpriced,
  };
}

function costOf(lines: readonly WorkedLine[]): number | undefined {
  const costs = lines.flatMap(({ cost }) => cost ?? []);
  return costs.length > 0 ? costs.reduce((sum, cost) => sum + cost, 0) : undefined;
}

const baseOf = (entry: Entry, field: string): number | undefined => {
  const figure = entry.figure(field);
  return figure && toBase(figure.number, figure.unit);
};

/** Hours by name, in the order they were first written down; a name has a cost only where each of its hours has. */
function worked(
  entries: readonly Entry[],
  field: 'who' | 'machine',
  rateOf: (entry: Entry) => number | undefined,
): WorkedLine[] {
  const all = new Map<string, { name: string; hours: number; cost: number | undefined }>();
  for (const entry of entries) {
    const name = entry.text(field);
    const time = baseOf(entry, 'work-hours');
    if (name === undefined || time === undefined) continue;
    const key = name.toLowerCase();
    const line = all.get(key) ?? { name, hours: 0, cost: 0 };
    all.set(key, line);
    const rate = rateOf(entry);
    line.hours += time;
    line.cost = rate === undefined || line.cost === undefined ? undefined : line.cost + time * rate;
  }
  return [...all.values()].map(({ cost, ...line }) => (cost === undefined ? line : { ...line, cost }));
}
