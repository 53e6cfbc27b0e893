import { bareGround, type Ground, type Known, overlaid, type Solution } from '../calc/solve.ts';
import { choiceOf, type Knowledge, knownOf, optionFact, saidFact } from './knowledge.ts';
import type { QuantityRecord } from './shapes.ts';

/** Facts given, with all that follows from them and from the defaults, but for choices settled otherwise and those `left` open. */
export function whatFollows(
  knowledge: Knowledge,
  facts: readonly Known[],
  left: ReadonlySet<string> = nothing,
): Solution {
  const before = left.size === 0 ? followed.get(facts) : undefined;
  if (before?.knowledge === knowledge) return before.solution;
  const solution = followedAfresh(knowledge, facts, left);
  if (left.size === 0) followed.set(facts, { knowledge, solution });
  return solution;
}

/** What followed from facts before: to find out what a question means the same ones are worked out again and again. */
const followed = new WeakMap<readonly Known[], { readonly knowledge: Knowledge; readonly solution: Solution }>();

function followedAfresh(knowledge: Knowledge, facts: readonly Known[], left: ReadonlySet<string>): Solution {
  const shifted = shiftedBy(knowledge, facts, left);
  return overlaid(usualOf(knowledge).ground, {
    facts: [...withMarks(facts), ...present(shifted)],
    without: shifted.keys(),
  });
}

/** What the solver starts from: the facts given, the mark on each that was said, and the defaults but for choices settled otherwise and those `left` open. */
export function startOf(knowledge: Knowledge, facts: readonly Known[], left = nothing): Known[] {
  const shifted = shiftedBy(knowledge, facts, left);
  const usual = [...usualOf(knowledge).defaults.values()].filter(({ id }) => !shifted.has(id));
  return [...withMarks(facts), ...usual, ...present(shifted)];
}

function withMarks(facts: readonly Known[]): Known[] {
  const said = facts.filter(({ assumed }) => !assumed).map(({ id }): Known => ({ id: saidFact(id), value: 1 }));
  return [...facts, ...said];
}

/** Defaults that facts change, by their ids; undefined where none is left. */
type Shifted = ReadonlyMap<string, Known | undefined>;

const present = (shifted: Shifted): Known[] => [...shifted.values()].filter((fact) => fact !== undefined);

function shiftedBy(knowledge: Knowledge, facts: readonly Known[], left: ReadonlySet<string>): Shifted {
  const { defaults, hanging } = usualOf(knowledge);
  const shifted = new Map<string, Known | undefined>();
  for (const id of left) shifted.set(id, undefined);
  const settled = new Set(facts.flatMap(({ id }) => choiceOf(id) ?? []));
  if (settled.size === 0) return shifted;
  for (const choice of settled) {
    const option = knowledge.choices.get(choice)?.default;
    if (option) shifted.set(optionFact(choice, option), undefined);
  }
  const given = new Set(facts.map(({ id }) => id));
  const holds = (fact: string): boolean => given.has(fact) || (defaults.has(fact) && !shifted.has(fact));
  for (const choice of settled)
    for (const record of hanging.get(choice) ?? [])
      if (!left.has(record.id)) shifted.set(record.id, defaultAmid(record, holds));
  return shifted;
}

const nothing: ReadonlySet<string> = new Set();

/** The default of a quantity while some choices are settled. */
function defaultAmid(record: QuantityRecord, holds: (fact: string) => boolean): Known | undefined {
  const other = record.defaultWhen?.find(({ when }) =>
    when.every(({ choice, is }) => is.some((option) => holds(optionFact(choice.id, option)))),
  );
  if (!other) return record.default && knownOf(record.id, record.default);
  return other.figure && knownOf(record.id, { ...other.figure, last: record.default?.last ?? false });
}

/** The defaults while nothing is said, which is what most of them stay at. */
interface Usual {
  readonly defaults: ReadonlyMap<string, Known>;
  /** All that follows from them. */
  readonly ground: Ground;
  /** Quantities whose default hangs on a choice, by the choice. */
  readonly hanging: ReadonlyMap<string, readonly QuantityRecord[]>;
}

const usuals = new WeakMap<Knowledge, Usual>();

function usualOf(knowledge: Knowledge): Usual {
  const before = usuals.get(knowledge);
  if (before) return before;
  const defaults = new Map(knowledge.defaults.map((fact) => [fact.id, fact]));
  const hanging = new Map<string, QuantityRecord[]>();
  for (const record of knowledge.conditional) {
    const fact = defaultAmid(record, (option) => defaults.has(option));
    if (fact) defaults.set(record.id, fact);
    else defaults.delete(record.id);
    for (const choice of new Set(record.defaultWhen?.flatMap(({ when }) => when.map((each) => each.choice.id))))
      hanging.set(choice, [...(hanging.get(choice) ?? []), record]);
  }
  const ground = overlaid(bareGround(knowledge.network), { facts: [...defaults.values()] });
  const usual = { defaults, ground, hanging };
  usuals.set(knowledge, usual);
  return usual;
}
