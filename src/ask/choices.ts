import { compare, toBase } from '../calc/quantity.ts';
import { systemOf } from '../calc/units.ts';
import type { Knowledge } from '../rules/knowledge.ts';
import type { ChoiceOption, ChoiceRecord, Figure } from '../rules/shapes.ts';
import { denial } from '../rules/words-kin.ts';
import { type Cue, placesOf } from './cue.ts';
import { type CueIndex, type CueTable, cueIndex, type HeardCue, heardIn } from './cue-index.ts';
import type { Fact } from './facts.ts';
import type { Sentence } from './sentence.ts';
import { namesIn, type Titles } from './titles.ts';
import { isSmall } from './token.ts';

/** An option of a choice; `within` for a cue that chooses it only while a figure lies within its ends. */
export interface OptionHeard {
  readonly choice: ChoiceRecord;
  readonly option: ChoiceOption;
  readonly within: boolean;
}

/** The cues of every option of every choice. */
export function optionIndex(
  { choices }: Knowledge,
  reading: (line: string) => Cue,
  laid?: CueTable,
): CueIndex<OptionHeard> {
  const lines = (choice: ChoiceRecord, option: ChoiceOption, cues: readonly string[], within: boolean) =>
    cues.map((text) => ({ text, of: { choice, option, within } }));
  return cueIndex(
    () =>
      [...choices.values()].flatMap((choice) =>
        choice.options.flatMap((option) => [
          ...lines(choice, option, option.cues, false),
          ...lines(choice, option, option.within?.cues ?? [], true),
        ]),
      ),
    reading,
    laid,
  );
}

/** Options that a question says: in words, each with how well it was heard, and by their titles. */
export interface OptionsHeard {
  readonly inWords: readonly HeardCue<OptionHeard>[];
  readonly named: readonly { readonly choice: ChoiceRecord; readonly option: ChoiceOption }[];
}

/** What choices are read from. */
export interface Said {
  readonly sentence: Sentence;
  readonly question: string;
  /** What the last reply asked for. */
  readonly asked: string | undefined;
}

/** The options that a question says. */
export const optionsHeard = (
  { knowledge, options, titles }: Heard,
  { sentence, question, asked }: Said,
): OptionsHeard => ({
  inWords: withoutNames(
    Array.from(heardIn(options, sentence)).filter(({ cue }) => !isTurnedRound(cue, sentence)),
    sentence,
    titles,
  ),
  named: byTitle(knowledge, question, asked),
});

/**
 * "Never buckles up": what a cue hears is not so where a word that denies stands right before it, unless the cue itself
 * speaks of one.
 */
function isTurnedRound({ needs }: Cue, sentence: Sentence): boolean {
  const { places } = sentence;
  const words = needs.flat(2);
  if (words.some((word) => denials.has(word))) return false;
  return words.some((word) => (places.get(word) ?? []).some((at) => isDenied(sentence, at)));
}

/** How far back a word that denies may stand, small words aside. */
const reach = 2;

function isDenied({ tokens, small }: Sentence, at: number): boolean {
  let seen = 0;
  for (let before = at - 1; seen < reach; before--) {
    const [token, next] = [tokens[before], tokens[before + 1]];
    if (token?.kind !== 'word') return false;
    if (isSmall(token, small)) continue;
    seen++;
    // "Can't we skip it" asks.
    if (denials.has(token.head)) return !(next?.kind === 'word' && doers.has(next.head));
  }
  return false;
}

const doers: ReadonlySet<string> = new Set(['we', 'i', 'you', 'they', 'he', 'she']);
const denials: ReadonlySet<string> = new Set([
  ...denial.split(' '),
  'hardly',
  'rarely',
  'refuse',
  'refuses',
  'forgets',
]);

/** What options are heard by. */
interface Heard {
  readonly knowledge: Knowledge;
  readonly options: CueIndex<OptionHeard>;
  readonly titles: Titles;
}

/**
 * "Merging taper 660 ft, downstream taper 100 ft" names two kinds, each for its figure, and says which is laid out by neither:
 * options that the names of figures speak of are left out where they are of one choice.
 */
function withoutNames(
  heard: readonly HeardCue<OptionHeard>[],
  sentence: Sentence,
  titles: Titles,
): readonly HeardCue<OptionHeard>[] {
  const names = namesIn(sentence, titles);
  const byName = names.size > 0 ? heard.filter(({ cue }) => placesOf(cue, sentence).every((at) => names.has(at))) : [];
  const isTwofold = ({ of: { choice } }: HeardCue<OptionHeard>): boolean =>
    new Set(byName.flatMap(({ of }) => (of.choice === choice ? [of.option.id] : []))).size > 1;
  return byName.some(isTwofold) ? heard.filter((each) => !(byName.includes(each) && isTwofold(each))) : heard;
}

/** Choices that a question settles, in words or by the unit a figure was given in: of each, the option heard best. */
export function choicesIn(
  knowledge: Knowledge,
  { inWords, named }: OptionsHeard,
  facts: readonly Fact[],
  turn: number,
): Fact[] {
  const best = new Map<string, { score: number; fact: Fact }>();
  for (const {
    of: { choice, option, within },
    score,
  } of inWords) {
    if (score <= (best.get(choice.id)?.score ?? 0) || (within && !isWithin(option, facts))) continue;
    best.set(choice.id, { score, fact: { quantity: choice.id, choice: option.id, turn, fresh: true } });
  }
  const settled = new Set(named.map(({ choice }) => choice.id));
  const heard = [...byUnit(knowledge, facts, turn), ...[...best.values()].map(({ fact }) => fact)];
  return [
    ...named.map(({ choice, option }): Fact => ({ quantity: choice.id, choice: option.id, turn, fresh: true })),
    ...heard.filter(({ quantity }) => !settled.has(quantity)),
  ];
}

function isWithin({ within }: ChoiceOption, facts: readonly Fact[]): boolean {
  const fact = facts.find(({ quantity }) => quantity === within?.of.id);
  if (!within || !fact || !('unit' in fact)) return false;
  const at = toBase(fact.number, fact.unit);
  const base = ({ number, unit }: Figure): number => toBase(number, unit);
  return (!within.min || compare(at, base(within.min)) >= 0) && (!within.max || compare(at, base(within.max)) <= 0);
}

/** Options said by their own titles: alone, where the choice was asked for, or after the title of the choice. */
function byTitle(knowledge: Knowledge, question: string, asked: string | undefined): OptionsHeard['named'] {
  const text = question.trim().toLowerCase();
  const named: { choice: ChoiceRecord; option: ChoiceOption }[] = [];
  for (const choice of titledIn(knowledge, text, asked)) {
    const option = choice.options.find(
      ({ title }) =>
        (choice.id === asked && text === title.toLowerCase()) ||
        text.includes(`${choice.title} ${title}`.toLowerCase()),
    );
    if (option) named.push({ choice, option });
  }
  return named;
}

/** Letters by which titles are looked for in a text, so that it need not be held against all of them. */
const opening = 3;

const openingsOf = new WeakMap<readonly ChoiceRecord[], ReadonlyMap<string, readonly ChoiceRecord[]>>();

function byOpening(choices: readonly ChoiceRecord[]): ReadonlyMap<string, readonly ChoiceRecord[]> {
  const openings = new Map<string, ChoiceRecord[]>();
  for (const choice of choices) {
    const letters = choice.title.slice(0, opening);
    openings.set(letters, [...(openings.get(letters) ?? []), choice]);
  }
  return openings;
}

/** The choices whose title stands in a text, and the one that was asked for, in the order of the records. */
function titledIn({ records: { choices } }: Knowledge, text: string, asked: string | undefined): ChoiceRecord[] {
  const openings = openingsOf.get(choices) ?? byOpening(choices);
  openingsOf.set(choices, openings);
  const found = new Set<ChoiceRecord>();
  for (let at = 0; at < text.length; at++)
    for (const choice of openings.get(text.slice(at, at + opening)) ?? [])
      if (text.startsWith(choice.title, at)) found.add(choice);
  if (found.size === 0 && asked === undefined) return [];
  return choices.filter((choice) => choice.id === asked || found.has(choice));
}

const settledByUnit = new WeakMap<Knowledge['choices'], readonly ChoiceRecord[]>();

/** Choices that the unit of a figure settles, where the figure was said in this turn. */
function byUnit({ choices }: Knowledge, facts: readonly Fact[], turn: number): Fact[] {
  const settled = settledByUnit.get(choices) ?? [...choices.values()].filter((choice) => choice.settledByUnitOf);
  settledByUnit.set(choices, settled);
  return settled.flatMap((choice): Fact[] => {
    const of = choice.settledByUnitOf?.id;
    const fact = of ? facts.find(({ quantity, fresh }) => fresh && quantity === of) : undefined;
    const system = fact && 'unit' in fact ? systemOf(fact.unit) : undefined;
    return system ? [{ quantity: choice.id, choice: system, turn, fresh: true }] : [];
  });
}
