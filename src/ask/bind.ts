import { toBase } from '../calc/quantity.ts';
import type { Figure } from '../calc/read/reading.ts';
import type { Unit } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { type Option, optionsFor } from './role.ts';
import type { Context } from './role-context.ts';
import type { Sentence } from './sentence.ts';

/** A figure that has found its role. */
export interface Bound {
  readonly record: QuantityRecord;
  readonly figure: Figure;
  readonly unit: Unit;
  /** True when the unit was not typed. */
  readonly unitAssumed: boolean;
  /** True when a word or the group gives it the role, not only what is asked. */
  readonly told: boolean;
  /** The figure as it was typed. */
  readonly typed: Figure;
}

export interface Binding {
  readonly bound: readonly Bound[];
  readonly unbound: readonly Figure[];
  /** How well all the roles are told. */
  readonly weight: number;
}

/** Figures of one question that a role is looked for: whoever types more has pasted a list, and the rest is told as not used. */
const mostFigures = 60;

/** Gives each figure of a sentence the role it fits best, each role once. */
export function bind(sentence: Sentence, context: Context): Binding {
  const figures = sentence.figures.map((at) => (sentence.tokens[at] as { figure: Figure }).figure);
  const near = figures.slice(0, mostFigures);
  const options = sentence.figures.map((at, i) => (i < mostFigures ? optionsFor(sentence, at, near, context) : []));
  const { without } = context;
  const open = without
    ? options.map((list, i) => list.filter(({ record }) => !without.get(figures[i]!)?.has(record.id)))
    : options;
  const chosen = assign(open, figures);
  const bound: Bound[] = [];
  const unbound: Figure[] = [];
  figures.forEach((figure, i) => {
    const option = chosen[i];
    if (option)
      bound.push({
        record: option.record,
        figure: option.figure,
        unit: option.unit,
        unitAssumed: option.unitAssumed,
        told: option.told,
        typed: figure,
      });
    else unbound.push(figure);
  });
  return { bound, unbound, weight: chosen.reduce((sum, option) => sum + (option?.score ?? 0), 0) };
}

/** Where nothing tells two lengths apart, the longer is the length of the patch: this much against the other way round. */
const disorder = -3;

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
      if (option && taken.has(option.record.id) && !isOneMore(option, chosen)) continue;
      chosen.length = i;
      chosen[i] = option;
      const isFirst = option && !taken.has(option.record.id);
      if (option) taken.add(option.record.id);
      walk(i + 1, score + (option?.score ?? 0));
      if (option && isFirst) taken.delete(option.record.id);
    }
  };
  walk(0, 0);
  return best;
}

/** True for one of several figures that are added up, each of them named. */
const isOneMore = (option: Option, chosen: readonly (Option | undefined)[]): boolean =>
  [option, ...chosen.filter((each) => each?.record === option.record)].every((each) => each?.isOneMore);

/** Where nothing tells two lengths apart, the longer is the length of the patch. */
function order(chosen: readonly (Option | undefined)[], figures: readonly Figure[]): number {
  const at = (place: 'longest' | 'next') =>
    chosen.findIndex((option) => option?.record.inGroup === place && !option.told);
  const [long, wide] = [at('longest'), at('next')];
  if (long < 0 || wide < 0) return 0;
  const size = (i: number): number => toBase(figures[i]!.number, chosen[i]!.unit);
  return size(long) < size(wide) ? disorder : 0;
}
