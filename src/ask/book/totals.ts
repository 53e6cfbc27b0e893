import { roundUp, toBase } from '../../calc/quantity.ts';
import { missing, type Solution } from '../../calc/solve.ts';
import { conflicts } from '../../rules/conflicts.ts';
import { startOf, whatFollows } from '../../rules/start.ts';
import type { Engine } from '../engine.ts';
import { type Fact, knownFrom } from '../facts.ts';
import { machineFacts } from './machine-rates.ts';
import { factsFor, type PatchFigure, patchFigures, reckoning } from './reckon.ts';
import type { Entry, Patch, Sheet } from './sheet.ts';
import { inWorkOrder } from './work-order.ts';

/** A figure with its ends, in base units. */
export interface Ends {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** One patch with what it comes to. */
export interface PatchTotals {
  readonly patch: Patch;
  readonly facts: readonly Fact[];
  readonly solved: Solution;
  readonly figures: Readonly<Partial<Record<PatchFigure, Ends>>>;
  /** What would have to be told for its tons to be known. */
  readonly missing: readonly string[];
  /** Figures of its own that cannot all be so: their quantities. */
  readonly disagree: readonly string[];
  /** Mix laid on it so far, in pounds, and how far, in inches. */
  readonly laid: number;
  readonly laidTo?: number;
}

/** One day's part of the plan. */
export interface DayPlan {
  /** A date given with the patches, a number where the plan was made here, or none. */
  readonly day: string | number | undefined;
  readonly patches: readonly PatchTotals[];
  readonly order: number;
  readonly loads: number | undefined;
  readonly tack: number;
  /** Time that the blade and the rollers move, in seconds, where it is known for all of its patches. */
  readonly grading: number | undefined;
  readonly rolling: number | undefined;
}

export interface Totals {
  readonly patches: readonly PatchTotals[];
  /** Sums over the patches that are known, by quantity. */
  readonly sums: Readonly<Partial<Record<PatchFigure, Ends>>>;
  /** The same over those not done yet, less what is laid on them. */
  readonly left: { readonly patches: number; readonly mass: number; readonly tack: number };
  readonly laid: number;
  readonly days: readonly DayPlan[];
  /** What the job as a whole comes to: costs, hours, devices, from the sums and what was told of the job. */
  readonly job: Solution;
  readonly defaults: readonly string[];
  /** Patches that are not in the sums. */
  readonly open: readonly PatchTotals[];
}

const added: readonly PatchFigure[] = [
  'patch-area',
  'premix-mass',
  'premix-order',
  'tack-volume',
  'grading-time',
  'rolling-time-total',
];

/** Works a whole job out, from its sheet as it stands: nothing of this is ever kept. */
export function totalsOf(engine: Engine, sheet: Sheet): Totals {
  const reckon = reckoning(engine);
  const loads = byPatch(sheet.loads);
  const patches = inWorkOrder(
    engine,
    sheet,
    sheet.patches.map((patch) => patchTotals(engine, reckon, sheet, patch, loads.get(patch.line) ?? [])),
  );
  const known = patches.filter(({ figures }) => figures['premix-mass']);
  const sums: Partial<Record<PatchFigure, Ends>> = {};
  for (const id of added) {
    const all = known.map(({ figures }) => figures[id]);
    if (all.length > 0 && all.every((figure) => figure !== undefined)) sums[id] = sumOf(all);
  }
  const laid = sheet.loads.reduce((sum, load) => sum + massOf(load), 0);
  const undone = known.filter(({ patch }) => !patch.done);
  const job = whatFollows(
    engine.knowledge,
    knownFrom([...withoutSums(sheet.facts), ...machineFacts(engine, sheet), ...sumFacts(sums, laid)]),
  );
  return {
    patches,
    sums,
    laid,
    left: {
      patches: patches.filter(({ patch }) => !patch.done).length,
      mass: undone.reduce((sum, { figures, laid }) => sum + Math.max(0, figures['premix-mass']!.value - laid), 0),
      tack: undone.reduce((sum, { figures, laid }) => sum + (laid > 0 ? 0 : (figures['tack-volume']?.value ?? 0)), 0),
    },
    days: daysOf(engine, sheet, known),
    job,
    defaults: assumedBy(known),
    open: patches.filter(({ figures }) => !figures['premix-mass']),
  };
}

/** What the sums rest on without anybody having said it. It is the same for all patches that were told of alike. */
function assumedBy(known: readonly PatchTotals[]): string[] {
  const seen = new Set<string>();
  const names = new Set<string>();
  for (const { facts, solved } of known) {
    let key = '';
    for (const { quantity } of facts) key += `${quantity},`;
    if (seen.has(key)) continue;
    seen.add(key);
    for (const id of added) for (const name of solved.get(id)?.assumed ?? []) names.add(name);
  }
  return [...names].sort();
}

/** Tons of a load, in pounds; a load without its ticket's figure counts for nothing. */
export function massOf(load: Entry): number {
  const mass = load.figure('placed-mass');
  return mass ? toBase(mass.number, mass.unit) : 0;
}

function byPatch(loads: readonly Entry[]): Map<string, Entry[]> {
  const map = new Map<string, Entry[]>();
  for (const load of loads) {
    const patch = load.text('patch');
    if (patch === undefined) continue;
    const list = map.get(patch);
    if (list) list.push(load);
    else map.set(patch, [load]);
  }
  return map;
}

/** What was told of the whole job and would stand in the way of its sums. */
const withoutSums = (facts: readonly Fact[]): Fact[] =>
  facts.filter(({ quantity }) => !quantity.startsWith('patch-') && !(added as readonly string[]).includes(quantity));

function sumFacts(sums: Totals['sums'], laid: number): Fact[] {
  const facts: Fact[] = [];
  const put = (quantity: string, number: number, unit: 'lb' | 'gal' | 'yd2', size: number): void => {
    facts.push({ quantity, turn: 0, number: number / size, unit });
  };
  if (sums['premix-mass']) put('premix-mass', sums['premix-mass'].value, 'lb', 1);
  if (sums['premix-order']) put('premix-order', sums['premix-order'].value, 'lb', 1);
  if (sums['tack-volume']) put('tack-volume', sums['tack-volume'].value, 'gal', 231);
  if (laid > 0) put('placed-mass', laid, 'lb', 1);
  return facts;
}

function patchTotals(
  engine: Engine,
  reckon: ReturnType<typeof reckoning>,
  sheet: Sheet,
  patch: Patch,
  loads: readonly Entry[],
): PatchTotals {
  const laid = loads.reduce((sum, load) => sum + massOf(load), 0);
  const laidTo = Math.max(0, ...loads.map((load) => lengthOf(load)));
  const facts = [...factsFor(sheet.facts, patch.facts)];
  if (laid > 0) facts.push({ quantity: 'placed-mass', turn: 0, number: laid, unit: 'lb' });
  if (laidTo > 0) facts.push({ quantity: 'placed-length', turn: 0, number: laidTo, unit: 'in' });
  const solved = reckon(facts);
  const figures: Partial<Record<PatchFigure, Ends>> = {};
  for (const id of patchFigures) {
    const fact = solved.get(id);
    if (fact) figures[id] = fact;
  }
  // Two ways to one figure: only then can they part.
  const twice = facts.some(
    ({ quantity }) => quantity === 'patch-area' || quantity === 'patch-volume' || quantity === 'premix-mass',
  );
  const clash = twice ? conflicts(engine.knowledge, solved, 'premix-mass')[0] : undefined;
  return {
    patch,
    facts,
    solved,
    figures,
    laid,
    ...(laidTo > 0 ? { laidTo } : {}),
    missing: figures['premix-mass'] ? [] : missingFor(engine, facts),
    disagree: clash ? [clash.method.finds, ...clash.method.needs] : [],
  };
}

function lengthOf(load: Entry): number {
  const length = load.figure('placed-length');
  return length ? toBase(length.number, length.unit) : 0;
}

/** What is missing depends on what is known alone, so it is worked once for all patches that know the same. */
function missingFor(engine: Engine, facts: readonly Fact[]): readonly string[] {
  const { network, ease } = engine.knowledge;
  const known = startOf(engine.knowledge, knownFrom(facts));
  const kept = lacking.get(engine) ?? new Map<string, readonly string[]>();
  lacking.set(engine, kept);
  const key = known.map(({ id }) => id).join();
  const found = kept.get(key) ?? missing(network, known, 'premix-mass', ease) ?? [];
  if (kept.size >= mostKept) kept.clear();
  kept.set(key, found);
  return found;
}

const lacking = new WeakMap<Engine, Map<string, readonly string[]>>();
const mostKept = 200;

function sumOf(all: readonly Ends[]): Ends {
  let [value, low, high] = [0, 0, 0];
  for (const each of all) {
    value += each.value;
    low += each.low;
    high += each.high;
  }
  return { value, low, high };
}

/**
 * The plan by days: patches that were given a date stand under it; the rest, where the crew has said how many tons it lays
 * in a day, are dealt out to days in their order, a patch never split unless it is more than a day by itself.
 */
function daysOf(engine: Engine, sheet: Sheet, known: readonly PatchTotals[]): DayPlan[] {
  const most = sheet.dayTons && toBase(sheet.dayTons.number, sheet.dayTons.unit);
  const dated = new Map<string, PatchTotals[]>();
  const undated: PatchTotals[] = [];
  for (const each of known) {
    const { day } = each.patch;
    if (day === undefined) undated.push(each);
    else dated.set(day, [...(dated.get(day) ?? []), each]);
  }
  const dealt: PatchTotals[][] = [];
  let tons = 0;
  for (const each of undated.filter(({ patch }) => !patch.done)) {
    const mass = each.figures['premix-mass']!.value;
    if (most === undefined || dealt.length === 0 || tons + mass > most * (1 + 1e-9)) {
      if (most !== undefined || dealt.length === 0) dealt.push([]);
      tons = most === undefined ? tons : 0;
    }
    dealt.at(-1)!.push(each);
    tons += mass;
  }
  return [
    ...[...dated].sort(([a], [b]) => (a < b ? -1 : 1)).map(([day, list]) => dayPlan(engine, sheet, day, list)),
    ...dealt.map((list, i) => dayPlan(engine, sheet, most === undefined ? undefined : i + 1, list)),
  ];
}

function dayPlan(engine: Engine, sheet: Sheet, day: DayPlan['day'], patches: readonly PatchTotals[]): DayPlan {
  const order = patches.reduce(
    (sum, { figures }) => sum + (figures['premix-order'] ?? figures['premix-mass']!).value,
    0,
  );
  const payload = reckoning(engine)(sheet.facts).get('truck-payload')?.value;
  return {
    day,
    patches,
    order,
    loads: payload ? roundUp(order / payload) : undefined,
    tack: patches.reduce((sum, { figures }) => sum + (figures['tack-volume']?.value ?? 0), 0),
    grading: sumIfAll(patches, 'grading-time'),
    rolling: sumIfAll(patches, 'rolling-time-total'),
  };
}

function sumIfAll(patches: readonly PatchTotals[], id: PatchFigure): number | undefined {
  const all = patches.map(({ figures }) => figures[id]?.value);
  return all.every((each) => each !== undefined) ? all.reduce((sum, each) => sum + each, 0) : undefined;
}
