import { toBase } from '../../calc/quantity.ts';
import type { Entry, Patch, Sheet } from './sheet.ts';
import { massOf, type PatchTotals, type Totals } from './totals.ts';
import { type YieldCheck, yieldCheck } from './yield.ts';

/** What one day's lines add up to, in base units. */
export interface DayRecord {
  readonly day: string;
  readonly loads: readonly {
    readonly load: Entry;
    readonly patch?: Patch | undefined;
    readonly mass: number;
    readonly soFar: number;
  }[];
  readonly mass: number;
  /** Patches that were laid on: what was meant, what went down that day and before. */
  readonly patches: readonly {
    readonly totals: PatchTotals;
    readonly today: number;
    readonly check?: YieldCheck | undefined;
  }[];
  /** Hours of people, by initials, and of machines; in seconds. */
  readonly people: readonly Worked[];
  readonly machines: readonly Worked[];
  readonly personHours: number;
  readonly machineHours: number;
  /** Tack by the stick, in cubic inches, where the readings tell it. */
  readonly sticks: readonly { readonly entry: Entry; readonly used?: number }[];
  readonly tack: number;
  readonly weather: readonly Entry[];
  readonly delays: readonly Entry[];
  readonly incidents: readonly Entry[];
  readonly notes: readonly Entry[];
  readonly delayed: number;
  readonly remaining: Totals['left'];
}

export interface Worked {
  readonly who: string;
  readonly task?: string | undefined;
  readonly hours: number;
}

/** Every day that something is written down for, in order. */
export function daysRecorded({ loads, hours, tack, weather, events }: Sheet): string[] {
  const days = [loads, hours, tack, weather, events].flat().map((entry) => entry.text('day'));
  return [...new Set(days.filter((day) => day !== undefined))].sort();
}

/** The record of a day. Lines without a date belong to none. */
export function dayRecord(sheet: Sheet, totals: Totals, day: string): DayRecord {
  const on = (entries: readonly Entry[]): Entry[] => inTime(entries.filter((entry) => entry.text('day') === day));
  const byLine = new Map(totals.patches.map((each) => [each.patch.line, each]));
  let mass = 0;
  const loads = on(sheet.loads).map((load) => {
    mass += massOf(load);
    return { load, patch: byLine.get(load.text('patch') ?? '')?.patch, mass: massOf(load), soFar: mass };
  });
  const hours = on(sheet.hours).map((entry) => ({ entry, hours: secondsOf(entry, 'work-hours') }));
  const people = hours.filter(({ entry }) => entry.text('who')).map(({ entry, hours }) => worked(entry, 'who', hours));
  const machines = hours
    .filter(({ entry }) => entry.text('machine'))
    .map(({ entry, hours }) => worked(entry, 'machine', hours));
  const sticks = on(sheet.tack).map((entry) => ({ entry, ...usedOf(entry) }));
  const events = on(sheet.events);
  const laidOn = [...new Set(loads.flatMap(({ load }) => byLine.get(load.text('patch') ?? '') ?? []))];
  return {
    day,
    loads,
    mass,
    patches: laidOn.map((each) => ({
      totals: each,
      today: loads.filter(({ patch }) => patch === each.patch).reduce((sum, load) => sum + load.mass, 0),
      check: yieldCheck(each.solved),
    })),
    people,
    machines,
    personHours: people.reduce((sum, each) => sum + each.hours, 0),
    machineHours: machines.reduce((sum, each) => sum + each.hours, 0),
    sticks,
    tack: sticks.reduce((sum, { used = 0 }) => sum + used, 0),
    weather: on(sheet.weather),
    delays: events.filter((event) => event.text('what') === 'delay'),
    incidents: events.filter((event) => event.text('what') === 'incident'),
    notes: events.filter((event) => event.text('what') !== 'delay' && event.text('what') !== 'incident'),
    delayed: events.reduce((sum, event) => sum + secondsOf(event, 'wait-time'), 0),
    remaining: totals.left,
  };
}

const worked = (entry: Entry, who: 'who' | 'machine', hours: number): Worked => ({
  who: entry.text(who)!,
  task: entry.text('task'),
  hours,
});

function secondsOf(entry: Entry, field: string): number {
  const time = entry.figure(field);
  return time ? toBase(time.number, time.unit) : 0;
}

/** What the stick tells: as written down, else the reading before less the one after. */
function usedOf(entry: Entry): { used?: number } {
  const [used, before, after] = ['tack-used', 'stick-before', 'stick-after'].map((field) => {
    const figure = entry.figure(field);
    return figure && toBase(figure.number, figure.unit);
  });
  if (used !== undefined) return { used };
  return before !== undefined && after !== undefined && before >= after ? { used: before - after } : {};
}

/** By the clock; those without a time as they were written down. */
function inTime(entries: readonly Entry[]): Entry[] {
  return entries
    .map((entry, i) => ({ entry, i, time: entry.text('time') }))
    .sort((a, b) =>
      a.time === undefined || b.time === undefined || a.time === b.time ? a.i - b.i : a.time < b.time ? -1 : 1,
    )
    .map(({ entry }) => entry);
}
