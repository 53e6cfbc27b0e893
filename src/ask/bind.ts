import { convert, toBase } from '../calc/quantity.ts';
import type { Figure } from '../calc/read/reading.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { UnitSystem } from './reply.ts';
import { isSmall, type Sentence } from './sentence.ts';

/** A figure that has found its role. */
export interface Bound {
  readonly record: QuantityRecord;
  readonly figure: Figure;
  readonly unit: Unit;
  /** True when the unit was not typed. */
  readonly unitAssumed: boolean;
  /** True when a word or the group gives it the role, not only what is asked. */
  readonly told: boolean;
}

export interface Binding {
  readonly bound: readonly Bound[];
  readonly unbound: readonly Figure[];
}

/** What helps to tell which role a figure has. */
export interface Context {
  readonly quantities: ReadonlyMap<string, QuantityRecord>;
  /** Quantities that a word beside a figure speaks of. */
  readonly byWord: ReadonlyMap<string, readonly QuantityRecord[]>;
  /** Steps from each quantity to what is asked; absent when it has nothing to do with it. */
  readonly near: ReadonlyMap<string, number>;
  /** Quantities asked for: a figure is not read as the very thing asked, unless it is being checked. */
  readonly sought: ReadonlySet<string>;
  /** Positions of the words that say what is asked: they tell no figure its role. */
  readonly spent: ReadonlySet<number>;
  /** What the last reply asked for. */
  readonly asked?: string | undefined;
  readonly system: UnitSystem;
}

/** How much each kind of evidence weighs. Words beside a figure beat its place in a group, which beats what is asked. */
const weights = { after: 10, before: 8, further: 2, setting: 4, group: 6, outOfGroup: -6, asked: 9, near: [5, 5, 4, 3, 2], far: -8, implausible: -9, sought: -12, disorder: -3, untold: -1, count: 3, plain: 1, enough: 2 };
const reach = 4;
const kept = 4;

interface Option {
  readonly record: QuantityRecord;
  readonly unit: Unit;
  readonly unitAssumed: boolean;
  readonly score: number;
  /** True when a word or the group says so, not only what is asked. */
  readonly told: boolean;
}

/** Gives each figure of a sentence the role it fits best, each role once. */
export function bind(sentence: Sentence, context: Context): Binding {
  const figures = sentence.figures.map((at) => ({ at, figure: (sentence.tokens[at] as { figure: Figure }).figure }));
  const options = figures.map(({ at, figure }) => optionsFor(sentence, at, figure, figures.map((f) => f.figure), context));
  const chosen = assign(options, figures.map((f) => f.figure));
  const bound: Bound[] = [];
  const unbound: Figure[] = [];
  figures.forEach(({ figure }, i) => {
    const option = chosen[i];
    if (option) bound.push({ record: option.record, figure: asRole(figure, option.record), unit: option.unit, unitAssumed: option.unitAssumed, told: option.told });
    else unbound.push(figure);
  });
  return { bound, unbound };
}

function optionsFor(sentence: Sentence, at: number, figure: Figure, all: readonly Figure[], context: Context): Option[] {
  const counted = countedAt(sentence, at, figure);
  const words = wordsBeside(sentence, counted ?? at, context.spent);
  const options: Option[] = [];
  for (const record of candidates(words, context)) {
    const unit = unitFor(figure, record, context.system);
    if (!unit || (counted !== undefined && record.dimension !== 'count')) continue;
    const role = roleScore(words, record);
    const group = groupScore(figure, all, record);
    const near = context.near.get(record.id);
    if (figure.unit === undefined && role <= 0 && group <= 0 && context.asked !== record.id && !mayBeBare(record, near)) continue;
    if (near !== 0 && context.asked !== record.id && !(isSayable(record) && (near === 1 || isInSetting(record, sentence)))) continue;
    const score =
      role +
      group +
      (near === undefined ? weights.far : (weights.near[near] ?? 0)) +
      (context.asked === record.id ? weights.asked : 0) +
      (context.sought.has(record.id) ? weights.sought : 0) +
      (isPlausible(asRole(figure, record), unit, record) ? 0 : weights.implausible) +
      (record.plain ? weights.plain : 0) +
      (figure.unit === undefined && record.dimension === 'count' && role > 0 ? weights.count : 0) +
      (record.default && role <= 0 && context.asked !== record.id ? weights.untold : 0);
    if (score >= weights.enough) options.push({ record, unit, unitAssumed: figure.unit === undefined && unit !== '1', score, told: role > 0 || group > 0 });
  }
  return options.sort((a, b) => b.score - a.score || (a.record.id < b.record.id ? -1 : 1)).slice(0, kept);
}

/** The only quantities a figure could be: those near what is asked, and those that a word beside it speaks of. */
function candidates({ before, after }: { before: string[]; after: string[] }, { quantities, byWord, near, asked }: Context): Set<QuantityRecord> {
  const found = new Set<QuantityRecord>();
  const add = (id: string): void => {
    const record = quantities.get(id);
    if (record) found.add(record);
  };
  for (const id of near.keys()) add(id);
  if (asked) add(asked);
  for (const word of [...before, ...after]) for (const record of byWord.get(word) ?? []) found.add(record);
  return found;
}

/** True for a quantity that people give figures for, rather than one that is only worked out. */
const isSayable = ({ roles, question, inGroup }: QuantityRecord): boolean => Boolean(roles ?? question ?? inGroup);

/** Head words before and after a figure, nearest first, as far as the next figure or mark. A word spent on the question tells nothing, unless it comes right after the figure. */
function wordsBeside(sentence: Sentence, at: number, spent: ReadonlySet<number>): { before: string[]; after: string[] } {
  const collect = (step: 1 | -1): string[] => {
    const words: string[] = [];
    for (let i = at + step; words.length < reach; i += step) {
      const token = sentence.tokens[i];
      if (token?.kind !== 'word') break;
      const next = step === 1 && words.length === 0;
      if (!isSmall(token, sentence.small)) words.push(spent.has(i) && !next ? '' : token.head);
    }
    return words;
  };
  return { before: collect(-1), after: collect(1) };
}

/** True where the field of a quantity that has one is spoken of. */
const isInSetting = ({ setting }: QuantityRecord, { places }: Sentence): boolean => setting?.some((word) => places.has(word)) ?? true;

/** "Two 20 ft feathers", "three 10 x 20 patches": a number right before a figure counts what that figure is of. The place of the last such figure. */
function countedAt({ tokens }: Sentence, at: number, figure: Figure): number | undefined {
  const next = tokens[at + 1];
  if (figure.unit || figure.group !== undefined || figure.form === 'ratio' || next?.kind !== 'figure') return undefined;
  let last = at + 1;
  while (tokens[last + 1]?.kind === 'figure') last++;
  return last;
}

/** True when a number with neither unit nor word beside it can still be this: what is asked for depends on it closely, and people are asked for it. */
const mayBeBare = ({ bare, plain, question }: QuantityRecord, near: number | undefined): boolean =>
  Boolean(bare) && near !== undefined && near <= 3 && Boolean(plain ?? question);

/** How surely the words beside a figure give it a role. A quantity with a field of its own comes first there. */
function roleScore(words: { before: string[]; after: string[] }, { roles, setting }: QuantityRecord): number {
  const best = (found: readonly string[], wanted: readonly string[] | undefined, most: number): number => {
    const at = found.findIndex((word) => wanted?.includes(word));
    return at < 0 ? 0 : most - weights.further * at;
  };
  const score = Math.max(best(words.after, roles?.after, weights.after), best(words.before, roles?.before, weights.before));
  return score && setting ? score + weights.setting : score;
}

/** In 12 x 300 x 2 the longest is the length, the next the width, and a third the depth. */
function groupScore(figure: Figure, all: readonly Figure[], record: QuantityRecord): number {
  if (figure.group === undefined || !record.inGroup) return 0;
  const size = (f: Figure): number => (f.unit ? toBase(f.number, f.unit) : f.number * 12);
  const group = all.filter((f) => f.group === figure.group).sort((a, b) => size(b) - size(a));
  const place = group.indexOf(figure);
  const wanted = { longest: 0, next: 1, thinnest: 2 }[record.inGroup];
  return place === wanted ? weights.group : weights.outOfGroup;
}

/** The unit a figure has in a role; undefined when it cannot have that role. */
function unitFor(figure: Figure, record: QuantityRecord, system: UnitSystem): Unit | undefined {
  if (figure.form === 'ratio') return ratioUnit(figure, record);
  if (figure.unit === undefined) {
    if (record.dimension === 'count') return '1';
    return record.bare ? record.bare[system] : undefined;
  }
  if (unitRow(figure.unit).dimension === record.dimension) return figure.unit;
  const other = figure.unclear === 'yd' ? ({ area: 'yd2', volume: 'yd3' } as const)[record.dimension as 'area' | 'volume'] : undefined;
  return other;
}

/** A ratio serves a record that reads parts; unlike parts of a whole could mean two things, so they serve none. */
function ratioUnit({ parts }: Figure, record: QuantityRecord): Unit | undefined {
  if (!record.parts || !parts) return undefined;
  if (record.parts === 'share') return parts[0] === parts[1] ? '%' : undefined;
  return parts[1] === 1 ? '1' : undefined;
}

/** The figure as its role has it: a ratio becomes the one number it stands for. */
function asRole(figure: Figure, { parts: reading }: QuantityRecord): Figure {
  const { parts } = figure;
  if (figure.form !== 'ratio' || !parts || !reading) return figure;
  return { ...figure, number: reading === 'share' ? (100 * parts[0]) / (parts[0] + parts[1]) : parts[0] / parts[1] };
}

function isPlausible(figure: Figure, unit: Unit, record: QuantityRecord): boolean {
  const { plausible } = record;
  if (!plausible) return true;
  return figure.number >= convert(plausible.min.number, plausible.min.unit, unit) * (1 - 1e-9) && figure.number <= convert(plausible.max.number, plausible.max.unit, unit) * (1 + 1e-9);
}

/** The best set of roles, each taken once; a figure may go without. Few figures and few options, so all are tried. */
function assign(options: readonly Option[][], figures: readonly Figure[]): (Option | undefined)[] {
  let best: (Option | undefined)[] = options.map(() => undefined);
  let most = 0;
  const most_from = options.map((list) => list[0]?.score ?? 0);
  for (let i = most_from.length - 2; i >= 0; i--) most_from[i]! += most_from[i + 1]!;
  const chosen: (Option | undefined)[] = [];
  const taken = new Set<string>();
  let tries = 0;
  const walk = (i: number, score: number): void => {
    if (score + (most_from[i] ?? 0) < most || tries++ > 5000) return;
    if (i === options.length) {
      const total = score + order(chosen, figures);
      if (total > most) {
        most = total;
        best = [...chosen];
      }
      return;
    }
    for (const option of [...options[i]!, undefined]) {
      if (option && taken.has(option.record.id)) continue;
      chosen[i] = option;
      if (option) taken.add(option.record.id);
      walk(i + 1, score + (option?.score ?? 0));
      if (option) taken.delete(option.record.id);
    }
  };
  walk(0, 0);
  return best;
}

/** Where nothing tells two lengths apart, the longer is the length of the patch. */
function order(chosen: readonly (Option | undefined)[], figures: readonly Figure[]): number {
  const at = (place: 'longest' | 'next') => chosen.findIndex((option) => option?.record.inGroup === place && !option.told);
  const [long, wide] = [at('longest'), at('next')];
  if (long < 0 || wide < 0) return 0;
  const size = (i: number): number => toBase(figures[i]!.number, chosen[i]!.unit);
  return size(long) < size(wide) ? weights.disorder : 0;
}
