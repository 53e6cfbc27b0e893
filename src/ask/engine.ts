import { choiceOf, type Knowledge, knowledge as shipped } from '../rules/knowledge.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { heads, plainWords, smallWords, weakWords } from '../rules/words.ts';
import { spanish } from '../rules/words-es.ts';
import { work } from '../rules/work.ts';
import { type OptionHeard, optionIndex } from './choices.ts';
import { commandWords } from './commands.ts';
import type { CueIndex } from './cue-index.ts';
import { type Goal, goalIndex, goalText } from './goal.ts';
import { type LaidCues, laid } from './laid.ts';
import { type NearIndex, nearIndex } from './near-goal.ts';
import { openWords, type WordFigure, wordFigures } from './said-as.ts';
import { type Titles, titlesOf } from './titles.ts';
import { tradeCue } from './trade-cue.ts';
import { type Vocabulary, vocabularyOf } from './vocabulary.ts';
import { workFigures } from './work-figures.ts';
import { isWork, workGoals } from './work-goals.ts';

/** A knowledge base with all that understanding needs of it, worked out once. */
export interface Engine {
  readonly knowledge: Knowledge;
  readonly vocabulary: Vocabulary;
  readonly small: ReadonlySet<string>;
  readonly weak: ReadonlySet<string>;
  readonly goals: CueIndex<Goal>;
  /** A goal by its text, as a job carries it. */
  readonly goalNamed: (text: string) => Goal | undefined;
  readonly options: CueIndex<OptionHeard>;
  readonly inWords: CueIndex<WordFigure>;
  /** Words that speak of a quantity without its figure, by its id. */
  readonly open: CueIndex<string>;
  readonly titles: Titles;
  readonly sides: readonly QuantityRecord[];
  /** Quantities by the words that give a figure their role. */
  readonly byWord: ReadonlyMap<string, readonly QuantityRecord[]>;
  /** Steps from every quantity to those a goal is about. */
  readonly near: (goal: Goal | undefined) => ReadonlyMap<string, number>;
  /** Records by all the words they are asked by; made when first asked for. */
  readonly nearest: () => NearIndex;
}

/** Farthest a quantity may lie from what is asked and still count as having to do with it. */
const farthest = 4;

/** Makes a knowledge base ready to be asked; `laid` is what its own cues come to, where that is at hand. */
export function engineOf(knowledge: Knowledge, laid?: LaidCues): Engine {
  const { quantities, limits, practices } = knowledge;
  const records = [...quantities.values(), ...limits.values(), ...practices.values()];
  const sought = once(() => [...records.filter((record) => record.cues), ...workGoals()]);
  const goals = goalIndex(sought, tradeCue, laid?.goals);
  const goalsByText = once(
    () =>
      new Map([...records, ...sought()].map(({ kind, id }): [string, Goal] => [goalText({ kind, id }), { kind, id }])),
  );
  const options = optionIndex(knowledge, tradeCue, laid?.options);
  const inWords = wordFigures(knowledge, tradeCue, laid?.inWords);
  const open = openWords(knowledge, tradeCue, laid?.open);
  const byWord = roleIndex(knowledge);
  const distances = new Map<string, ReadonlyMap<string, number>>();
  const small = new Set(smallWords);
  const vocabulary = vocabularyOf(
    heads,
    () =>
      [
        goals.words,
        [...byWord.keys()],
        options.words,
        inWords.words,
        open.words,
        commandWords,
        smallWords,
        weakWords,
        plainWords,
      ].flat(),
    Object.values(spanish).flat(),
    laid?.words,
  );
  return {
    knowledge,
    vocabulary,
    small,
    weak: new Set(weakWords),
    sides: [...quantities.values()].filter(({ inGroup }) => inGroup),
    titles: titlesOf(knowledge.records.quantities, vocabulary, small, laid?.titles),
    goals,
    goalNamed: (text) => goalsByText().get(text),
    byWord,
    options,
    inWords,
    open,
    nearest: once(() => nearIndex(goals, (goal) => titleWords(knowledge, goal, vocabulary), small)),
    near: (goal) => {
      const key = goal ? `${goal.kind}/${goal.id}` : '';
      const before = distances.get(key);
      if (before) return before;
      const map = goal ? distancesFrom(knowledge, startsOf(knowledge, goal)) : plainOnes(knowledge);
      distances.set(key, map);
      return map;
    },
  };
}

const once = <T>(make: () => T): (() => T) => {
  let made: T | undefined;
  return () => (made ??= make());
};

/** The words of a rule's title and, of a fault, of what is seen. */
function titleWords(knowledge: Knowledge, { kind, id }: Goal, { head }: Vocabulary): string[] {
  const record =
    kind === 'limit'
      ? knowledge.limits.get(id)
      : kind === 'practice'
        ? knowledge.practices.get(id)
        : kind === 'quantity'
          ? knowledge.quantities.get(id)
          : undefined;
  const fault = kind === 'fault' ? work.faults.get(id) : undefined;
  const text = `${record?.title ?? ''} ${fault ? `${fault.title} ${fault.seen}` : ''}`;
  return text
    .toLowerCase()
    .split(/[^a-z0-9'-]+/)
    .filter(Boolean)
    .map(head);
}

/** Quantities that a goal asks for: itself, and where it stands in for others, each of those. */
export function soughtBy(knowledge: Knowledge, goal: Goal | undefined): string[] {
  if (goal?.kind !== 'quantity') return [];
  const { network, quantities } = knowledge;
  const others = quantities.get(goal.id)?.standsIn
    ? (network.finding.get(goal.id) ?? []).flatMap((at) => network.methods[at]!.needs)
    : [];
  return [goal.id, ...others];
}

/** The quantities a goal is about: itself, or what a limit judges and holds it against. */
export function startsOf(knowledge: Knowledge, goal: Goal | undefined): string[] {
  if (!goal) return [];
  if (goal.kind === 'quantity') return [goal.id];
  if (isWork(goal.kind)) return workFigures(knowledge, goal.kind, goal.id);
  const rule = knowledge.limits.get(goal.id);
  if (!rule) return [];
  // Under an agency's bound the general one is shown beside it, so its figures are still of the question.
  const bounds = [rule, rule.agency?.general]
    .flatMap((each) => (each ? [each, ...(each.cases ?? [])] : []))
    .flatMap(({ max, min }) => [max, min]);
  return [...new Set([rule.on, ...bounds].flatMap((part) => (part && 'id' in part ? [part.id] : [])))];
}

function roleIndex({ quantities }: Knowledge): Map<string, QuantityRecord[]> {
  const index = new Map<string, QuantityRecord[]>();
  for (const record of quantities.values()) {
    for (const word of new Set([
      ...(record.roles?.before ?? []),
      ...(record.roles?.after ?? []),
      ...(record.roles?.beside ?? []),
      ...(record.roles?.of ?? []),
    ])) {
      index.set(word, [...(index.get(word) ?? []), record]);
    }
  }
  return index;
}

/** With nothing asked, figures are of the patch itself. */
const plainOnes = ({ quantities }: Knowledge): Map<string, number> =>
  new Map([...quantities.values()].filter(({ plain }) => plain).map(({ id }) => [id, 1]));

/** Steps outward through the relations; one that has to be turned round counts for two. */
function distancesFrom({ network, choices }: Knowledge, starts: readonly string[]): Map<string, number> {
  const settlers = settlersOf(choices);
  const distance = new Map(starts.map((id) => [id, 0]));
  for (let steps = 0; steps < farthest; steps++) {
    for (const [id, at] of [...distance]) {
      if (at !== steps) continue;
      for (const each of network.finding.get(id) ?? []) {
        const { finds, needs, relation } = network.methods[each]!;
        const there = steps + (finds === relation.finds.id ? 1 : 2);
        for (const need of needs) {
          // What a choice is settled by has to do with it as well: the speed, with the kind of a road in town.
          for (const part of [need, ...(settlers.get(choiceOf(need) ?? '') ?? [])])
            if (there < (distance.get(part) ?? farthest + 1)) distance.set(part, there);
        }
      }
    }
  }
  return distance;
}

/** Quantities whose figures settle a choice, by the choice. */
const settlersOf = (choices: Knowledge['choices']): ReadonlyMap<string, readonly string[]> =>
  new Map(
    [...choices.values()].map(({ id, options }) => [
      id,
      options.flatMap(({ within }) => (within ? [within.of.id] : [])),
    ]),
  );

/** The engine over the rules as shipped. */
export const engine: Engine = engineOf(shipped, laid);
