import { fromBase, toBase } from '../../calc/quantity.ts';
import type { Knowledge } from '../../rules/knowledge.ts';
import type { Fact } from '../facts.ts';
import type { UnitSystem } from '../reply.ts';
import type { Book, Line } from './book.ts';
import type { Cell, Figure } from './change.ts';
import { type WorkOrder, workOrders } from './fields.ts';
import { placeOf, stretch } from './place.ts';

/** A job as it is reckoned with: what its book holds, line by line. */
export interface Sheet {
  readonly name?: string | undefined;
  readonly road?: string | undefined;
  /** Down when the crew works toward lower stations. */
  readonly direction?: string | undefined;
  readonly note?: string | undefined;
  readonly dayTons?: Figure | undefined;
  /** An agency's own rules. */
  readonly rules?: unknown;
  /** A published schedule of rates of machines, as it was sent. */
  readonly rates?: unknown;
  /** The machines on the job, as one says them. */
  readonly machines?: string | undefined;
  readonly order: WorkOrder;
  /** What holds for every patch that does not say otherwise. */
  readonly facts: readonly Fact[];
  /** In the order they are laid. */
  readonly patches: readonly Patch[];
  readonly loads: readonly Entry[];
  readonly hours: readonly Entry[];
  readonly tack: readonly Entry[];
  readonly weather: readonly Entry[];
  readonly events: readonly Entry[];
}

export interface Patch {
  readonly line: string;
  /** What the crew calls it: its own label, else its number in the order of the list. */
  readonly label: string;
  readonly road?: string | undefined;
  readonly station?: string | undefined;
  readonly stationEnd?: string | undefined;
  /** Where it begins, in inches along the road. */
  readonly at?: number | undefined;
  readonly lane?: string | undefined;
  readonly defect?: string | undefined;
  readonly repair?: string | undefined;
  readonly photos?: string | undefined;
  readonly note?: string | undefined;
  readonly day?: string | undefined;
  readonly done: boolean;
  /** Given for this patch alone, with what its stations and readings tell. */
  readonly facts: readonly Fact[];
}

/** Any other line: a load, hours, a weather reading. */
export interface Entry {
  readonly line: string;
  readonly text: (field: string) => string | undefined;
  readonly figure: (field: string) => Figure | undefined;
}

/** Reads a book into a sheet. Lines that were taken off are not in it. */
export function sheetOf(book: Book, { quantities, choices }: Knowledge): Sheet {
  const lines = [...book.lines.values()].filter(({ gone }) => !gone);
  const of = (kind: string): Entry[] => lines.filter((line) => line.kind === kind).map(entryOf);
  const job = book.lines.get('job');
  const field = job && entryOf(job);
  const isFact = (name: string): boolean => quantities.has(name) || choices.has(name);
  const file = (name: string): unknown => {
    const value = job?.fields.get(name)?.value;
    return typeof value === 'object' && value !== null && 'rules' in value ? value.rules : undefined;
  };
  const [rules, rates] = [file('rules'), file('rates')];
  const direction = field?.text('direction');
  const patches = lines.filter(({ kind }) => kind === 'patch').map((line) => patchOf(line, isFact));
  return {
    name: field?.text('name'),
    road: field?.text('road'),
    note: field?.text('note'),
    direction,
    dayTons: field?.figure('day-tons'),
    ...(rules === undefined ? {} : { rules }),
    ...(rates === undefined ? {} : { rates }),
    machines: field?.text('machines'),
    order: workOrders.find((order) => order === field?.text('order')) ?? 'road',
    facts: job ? factsOf(job, isFact) : [],
    patches: inOrder(labelled(patches), direction === 'down'),
    loads: of('load'),
    hours: of('hours'),
    tack: of('tack'),
    weather: of('weather'),
    events: of('event'),
  };
}

/** The system most of a sheet's figures are in. */
export function systemOfSheet({ facts, patches }: Sheet): UnitSystem {
  const metric = new Set([
    'm',
    'mm',
    'cm',
    'km',
    't',
    'kg',
    'L',
    'm2',
    'm3',
    'kg/m2/mm',
    'L/m2',
    'km/h',
    'degC',
    't/h',
  ]);
  const units = [...facts, ...patches.flatMap((patch) => patch.facts)].flatMap((fact) =>
    'unit' in fact ? fact.unit : [],
  );
  return units.filter((unit) => metric.has(unit)).length * 2 > units.length ? 'metric' : 'us';
}

function entryOf({ id, fields }: Line): Entry {
  const value = (name: string): Cell | null | undefined => fields.get(name)?.value;
  return {
    line: id,
    text: (name) => {
      const cell = value(name);
      return typeof cell === 'string' ? cell : undefined;
    },
    figure: (name) => {
      const cell = value(name);
      return isFigure(cell) ? cell : undefined;
    },
  };
}

const isFigure = (cell: Cell | null | undefined): cell is Figure =>
  typeof cell === 'object' && cell !== null && 'unit' in cell;

function factsOf({ fields }: Line, isFact: (name: string) => boolean): Fact[] {
  return [...fields].flatMap(([name, { value }]): Fact[] => {
    if (!isFact(name)) return [];
    if (isFigure(value)) return [{ quantity: name, turn: 0, number: value.number, unit: value.unit }];
    return typeof value === 'string' ? [{ quantity: name, turn: 0, choice: value }] : [];
  });
}

function patchOf(line: Line, isFact: (name: string) => boolean): Patch {
  const { text } = entryOf(line);
  const [station, stationEnd] = [text('station'), text('station-end')];
  const readings = line.fields.get('readings')?.value;
  return {
    line: line.id,
    label: text('label') ?? '',
    road: text('road'),
    station,
    stationEnd,
    at: station === undefined ? undefined : placeOf(station),
    lane: text('lane'),
    defect: text('defect'),
    repair: text('repair'),
    photos: text('photos'),
    note: text('note'),
    day: text('day'),
    done: line.fields.get('done')?.value === true,
    facts: withTold(factsOf(line, isFact), station, stationEnd, Array.isArray(readings) ? (readings as Figure[]) : []),
  };
}

/** What the stations and the depth readings tell, where it was not given outright: length, average depth, deepest spot. */
function withTold(
  facts: Fact[],
  station: string | undefined,
  end: string | undefined,
  readings: readonly Figure[],
): Fact[] {
  const has = (quantity: string): boolean => facts.some((fact) => fact.quantity === quantity);
  const told: Fact[] = [];
  const length = station !== undefined && end !== undefined ? stretch(station, end) : undefined;
  if (length && !has('patch-length') && !has('patch-area'))
    told.push(figure('patch-length', length, station!.includes('+') && /\+\d{3}(?!\d)/.test(station!) ? 'm' : 'ft'));
  const [first] = readings;
  if (first) {
    const depths = readings.map(({ number, unit }) => toBase(number, unit));
    const average = depths.reduce((sum, depth) => sum + depth, 0) / depths.length;
    if (!has('patch-depth')) told.push(figure('patch-depth', average, first.unit));
    if (!has('deepest-depth')) told.push(figure('deepest-depth', Math.max(...depths), first.unit));
  }
  return [...facts, ...told];
}

const figure = (quantity: string, base: number, unit: Figure['unit']): Fact => ({
  quantity,
  turn: 0,
  number: Number(fromBase(base, unit).toPrecision(12)),
  unit,
});

/** Along the road, the way the crew goes; those without a place come last, in the order they were written down. */
function inOrder(patches: readonly Patch[], down: boolean): Patch[] {
  const way = down ? -1 : 1;
  return patches
    .map((patch, i) => ({ patch, i }))
    .sort((a, b) => {
      const [x, y] = [a.patch.at, b.patch.at];
      if (x === undefined || y === undefined) return (x === undefined ? 1 : 0) - (y === undefined ? 1 : 0) || a.i - b.i;
      return (x - y) * way || a.i - b.i;
    })
    .map(({ patch }) => patch);
}

/**
 * Every patch by a label of its own, in the order they were written down: one without gets the lowest number that is free,
 * and of two that were given the same one on two phones the later is called 7b.
 */
function labelled(patches: readonly Patch[]): Patch[] {
  const taken = new Set<string>();
  const given = new Set(patches.map(({ label }) => label));
  let next = 0;
  return patches.map((patch) => {
    let { label } = patch;
    if (label === '') {
      do next++;
      while (given.has(String(next)));
      label = String(next);
    } else for (let letter = 1; taken.has(label); letter++) label = `${patch.label}${letters[letter] ?? `-${letter}`}`;
    taken.add(label);
    return { ...patch, label };
  });
}

const letters = 'abcdefghijklmnopqrstuvwxyz';

/** The label for one more patch: the number after the highest. */
export function nextLabel({ patches }: Sheet): string {
  const numbers = patches.map(({ label }) => (/^\d{1,6}$/.test(label) ? Number(label) : 0));
  return String(Math.max(0, ...numbers) + 1);
}
