import { toBase } from '../../calc/quantity.ts';
import type { Sheet } from './sheet.ts';
import { massOf, type Totals } from './totals.ts';

/** What was laid along one road, in base units; a cost or hours a ton only where both are known. */
export interface RoadSeason {
  /** Undefined for patches and loads that no road was told for. */
  readonly road: string | undefined;
  readonly patches: number;
  readonly done: number;
  readonly mass: number;
  readonly hours: number;
  readonly cost?: number;
  readonly costPerTon?: number;
  readonly hoursPerTon?: number;
  /** Tons by month, as `2026-05`. */
  readonly months: ReadonlyMap<string, number>;
}

/**
 * A season by road, over the jobs of it. Hours and costs are written down for a job, not for a patch, so a job that lies
 * on several roads shares them out by the tons it laid on each.
 */
export function seasonOf(jobs: readonly { readonly sheet: Sheet; readonly totals: Totals }[]): RoadSeason[] {
  const roads = new Map<
    string | undefined,
    {
      patches: number;
      done: number;
      mass: number;
      hours: number;
      cost: number;
      costed: number;
      months: Map<string, number>;
    }
  >();
  const at = (road: string | undefined) => {
    const before = roads.get(road) ?? { patches: 0, done: 0, mass: 0, hours: 0, cost: 0, costed: 0, months: new Map() };
    roads.set(road, before);
    return before;
  };
  for (const { sheet, totals } of jobs) {
    const roadOf = new Map(sheet.patches.map((patch) => [patch.line, patch.road ?? sheet.road]));
    const masses = new Map<string | undefined, number>();
    for (const { done, road } of sheet.patches) {
      const entry = at(road ?? sheet.road);
      entry.patches++;
      if (done) entry.done++;
    }
    for (const load of sheet.loads) {
      const road = roadOf.get(load.text('patch') ?? '') ?? sheet.road;
      const mass = massOf(load);
      masses.set(road, (masses.get(road) ?? 0) + mass);
      const month = load.text('day')?.slice(0, 7);
      const { months } = at(road);
      if (month) months.set(month, (months.get(month) ?? 0) + mass);
    }
    const people = sheet.hours.filter((entry) => entry.text('who') !== undefined);
    const hours = people.reduce((sum, entry) => {
      const time = entry.figure('work-hours');
      return sum + (time ? toBase(time.number, time.unit) : 0);
    }, 0);
    const cost = totals.job.get('job-cost')?.value;
    for (const [road, mass] of masses) {
      const entry = at(road);
      const share = totals.laid > 0 ? mass / totals.laid : 0;
      entry.mass += mass;
      entry.hours += hours * share;
      if (cost !== undefined) {
        entry.cost += cost * share;
        entry.costed += mass;
      }
    }
  }
  return [...roads]
    .map(
      ([road, { costed, cost, hours, mass, ...rest }]): RoadSeason => ({
        road,
        mass,
        hours,
        ...rest,
        ...(costed > 0 && costed === mass ? { cost, costPerTon: cost / mass } : {}),
        ...(hours > 0 && mass > 0 ? { hoursPerTon: hours / mass } : {}),
      }),
    )
    .sort((a, b) => b.mass - a.mass || ((a.road ?? '') < (b.road ?? '') ? -1 : 1));
}
