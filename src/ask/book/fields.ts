import type { Dimension } from '../../calc/dimension.ts';
import type { Knowledge } from '../../rules/knowledge.ts';
import { work } from '../../rules/work.ts';

/** What a field may hold. */
export type FieldType =
  | { readonly type: 'text'; readonly most: number }
  | { readonly type: 'initials' }
  | { readonly type: 'date' }
  | { readonly type: 'clock' }
  | { readonly type: 'yes' }
  | { readonly type: 'line'; readonly kind: LineKind }
  | { readonly type: 'choice'; readonly options: readonly string[] }
  | { readonly type: 'figure'; readonly dimension: Dimension; readonly quantity?: string }
  | { readonly type: 'figures'; readonly dimension: Dimension }
  /** A JSON file, of so many characters at most. */
  | { readonly type: 'rules'; readonly most: number };

/** The lines a book has: the job itself, and what is on it. */
export const lineKinds = ['job', 'patch', 'load', 'hours', 'tack', 'weather', 'event'] as const;
export type LineKind = (typeof lineKinds)[number];

/** A line's name from the stamp of its first change: no two phones make the same one, and older lines sort first. */
export const newLine = (kind: LineKind, stamp: string): string => `${kind}/${stamp.replaceAll('.', '-')}`;

/** Orders of work that a job may be laid in; along the road where none is said. */
export const workOrders = ['road', 'lane', 'urgent'] as const;
export type WorkOrder = (typeof workOrders)[number];

const text = (most: number): FieldType => ({ type: 'text', most });
const date: FieldType = { type: 'date' };
const clock: FieldType = { type: 'clock' };
const yes: FieldType = { type: 'yes' };
const patch: FieldType = { type: 'line', kind: 'patch' };
const initials: FieldType = { type: 'initials' };
const choice = (options: Iterable<string>): FieldType => ({ type: 'choice', options: [...options] });

/** Fields that are no figure of the trade, by kind of line. */
const own: Readonly<Record<LineKind, Readonly<Record<string, FieldType>>>> = {
  job: {
    name: text(120),
    road: text(80),
    direction: choice(['up', 'down']),
    // How much can be laid in a day: the crew's own figure, for the plan by days.
    'day-tons': { type: 'figure', dimension: 'mass' },
    // The order in which the patches are laid.
    order: choice(workOrders),
    machines: text(300),
    note: text(1000),
    rules: { type: 'rules', most: 16 * 1024 },
    rates: { type: 'rules', most: 64 * 1024 },
  },
  patch: {
    label: text(20),
    road: text(80),
    station: text(40),
    'station-end': text(40),
    lane: text(40),
    defect: choice(work.defects.keys()),
    repair: choice(work.repairs.keys()),
    readings: { type: 'figures', dimension: 'length' },
    day: date,
    done: yes,
    photos: text(1000),
    note: text(1000),
  },
  load: { day: date, time: clock, patch, ticket: text(40), truck: text(40), note: text(300) },
  hours: { day: date, who: initials, machine: text(60), task: text(120) },
  tack: { day: date, patch, note: text(300) },
  weather: { day: date, time: clock, sky: text(60) },
  event: { day: date, time: clock, what: choice(['delay', 'incident', 'note']), note: text(1000) },
};

/** Figures of the trade that a line of a kind may hold; a job and a patch may hold any. */
const figuresOf: Readonly<Partial<Record<LineKind, readonly string[]>>> = {
  load: ['placed-mass', 'placed-length', 'mix-temperature'],
  hours: ['work-hours', 'labor-rate', 'equipment-rate'],
  tack: ['tack-used', 'stick-before', 'stick-after', 'tack-temperature'],
  weather: ['air-temperature', 'surface-temperature', 'wind-speed'],
  event: ['wait-time'],
};

export const isLineKind = (kind: string): kind is LineKind => (lineKinds as readonly string[]).includes(kind);

/** The fields of a kind that have a name of their own, in the order they are shown. */
export function fieldsOf(kind: LineKind): readonly string[] {
  return [...Object.keys(own[kind]), ...(figuresOf[kind] ?? [])];
}

/** What a field of a kind of line may hold; undefined for one that no such line has. */
export function fieldType(kind: LineKind, field: string, { quantities, choices }: Knowledge): FieldType | undefined {
  if (field === 'gone') return yes;
  if (Object.hasOwn(own[kind], field)) return own[kind][field];
  const allowed = figuresOf[kind];
  if (allowed && !allowed.includes(field)) return undefined;
  const record = quantities.get(field);
  if (record) return { type: 'figure', dimension: record.dimension, quantity: field };
  const settled = allowed ? undefined : choices.get(field);
  return settled && choice(settled.options.map(({ id }) => id));
}
