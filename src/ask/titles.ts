import { numberWords } from '../calc/read/number-words.ts';
import { read } from '../calc/read/read.ts';
import { unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { type Sentence, sentenceOf } from './sentence.ts';
import { isCount, isSmall, type Token } from './token.ts';
import type { Vocabulary } from './vocabulary.ts';

/** Quantities by their titles in head words, found by the last word; made when first asked for. */
export type Titles = () => ReadonlyMap<
  string,
  readonly { readonly words: readonly string[]; readonly record: QuantityRecord }[]
>;

/**
 * The titles of quantities, longest first: "width of the roller drum 5 ft" is the drum, not the patch. `laid` is what these
 * very titles come to, where that is at hand.
 */
export function titlesOf(
  quantities: readonly QuantityRecord[],
  vocabulary: Vocabulary,
  small: ReadonlySet<string>,
  laid?: string,
): Titles {
  let made: Map<string, { words: string[]; record: QuantityRecord }[]> | undefined;
  return () => {
    if (made) return made;
    made = new Map();
    const lines = (laid ?? layTitles(quantities, vocabulary, small)).split('\n');
    for (const [at, record] of quantities.entries()) {
      const words = lines[at]!.split('|').filter(Boolean);
      const last = words.at(-1);
      if (last === undefined) continue;
      made.set(
        last,
        [...(made.get(last) ?? []), { words, record }].sort((a, b) => b.words.length - a.words.length),
      );
    }
    return made;
  };
}

/** What can be kept of titles: the keys of each in a line, apart by `|`. */
export const layTitles = (
  quantities: readonly QuantityRecord[],
  vocabulary: Vocabulary,
  small: ReadonlySet<string>,
): string =>
  quantities
    .map(({ title }) => keysOf(title.toLowerCase().replaceAll(/[(),]/g, ' '), vocabulary, small).join('|'))
    .join('\n');

/** A title in the keys it is found by. Only one with a number or a phrase in it has to be read as a sentence is. */
function keysOf(title: string, vocabulary: Vocabulary, small: ReadonlySet<string>): string[] {
  const words = title.split(' ').filter(Boolean);
  const isPlain = words.every(
    (word, at) => !numberLike.test(word) && !numberWords.has(word) && !vocabulary.phrase(words, at),
  );
  if (isPlain) return words.map(vocabulary.head).filter((word) => word && !small.has(word));
  return sentenceOf(read(title), vocabulary, small)
    .tokens.filter((token) => !isSmall(token, small))
    .map(keyOf);
}

/** What is a number, or makes one of a unit: "an hour", "half a drum". */
const numberLike = /^(?:\d|an?$|half$)/;

/** A token as titles are found by: a word by its head, a figure in a title ("an hour", "half a") by what it reads. */
const keyOf = (token: Token): string =>
  token.kind === 'word'
    ? token.head
    : token.kind === 'figure'
      ? `${token.figure.number} ${token.figure.unit ?? ''}`
      : token.text;

/** The most words looked at. */
const longestTitle = 10;

/** Marks that a title can hold. */
const insideTitles = new Set([',', '(', ')']);

/** Small words that may stand between a title and its figure. */
const joins = new Set(['is', 'was', 'are', 'of']);

/** The quantity whose whole title stands right before a figure. */
export const titledBefore = (sentence: Sentence, at: number, titles: Titles): QuantityRecord | undefined =>
  titleBefore(sentence, at, titles)?.record;

/** The title that stands right before a figure, and where it begins. */
function titleBefore(
  { tokens, small }: Sentence,
  at: number,
  titles: Titles,
): { record: QuantityRecord; from: number } | undefined {
  const next = tokens[at - 1];
  const figure = tokens[at];
  // "Second lift rolled, 2 lift patch": a comma parts a number from what stands before it.
  if (next?.kind === 'mark' && figure?.kind === 'figure' && !figure.figure.unit) return undefined;
  if (next?.kind === 'word' && isSmall(next, small) && !joins.has(next.head)) return undefined;
  const before: string[] = [];
  const places: number[] = [];
  for (let i = at - 1; i >= 0 && before.length < longestTitle; i--) {
    const token = tokens[i]!;
    if (token.kind === 'mark' && insideTitles.has(token.text)) continue;
    if (token.kind !== 'word' && token.kind !== 'figure') break;
    if (isSmall(token, small)) continue;
    before.push(keyOf(token));
    places.push(i);
  }
  const found =
    before.length === 0
      ? undefined
      : titles()
          .get(before[0]!)
          ?.find(({ words }) => words.every((word, i) => before[words.length - 1 - i] === word));
  const isWhole = found && (found.words.length > 1 || isAssignment(tokens, small, found.words.length));
  const isTyped = found && found.words.length === 1 && isTypedWhole(found.record, tokens[places[0]!]!, tokens, at);
  return found && (isWhole || isTyped || (found.record.dimension === 'count' && isCount(tokens, at)))
    ? { record: found.record, from: places[found.words.length - 1]! }
    : undefined;
}

/** "Buffer space 300": two words that are read as one; or a word alone with a figure in its own unit, "queue 750 ft". */
function isTypedWhole(
  { title, dimension }: QuantityRecord,
  { at: [from, to] }: Token,
  tokens: readonly Token[],
  figureAt: number,
): boolean {
  if (title.length !== to - from) return false;
  const [token, next] = [tokens[figureAt], tokens[figureAt + 1]];
  const unit = token?.kind === 'figure' ? token.figure.unit : undefined;
  const isOwn = unit !== undefined && unitRow(unit).dimension === dimension;
  return title.includes(' ') || (isOwn && (next === undefined || next.kind === 'mark'));
}

const named = new WeakMap<Sentence, ReadonlySet<number>>();

/** The places of the names of quantities that a figure follows, and nothing after it in its part. */
export function namesIn(sentence: Sentence, titles: Titles): ReadonlySet<number> {
  const before = named.get(sentence);
  if (before) return before;
  const { tokens, figures } = sentence;
  const inside = new Set<number>();
  for (const of of figures) {
    const [last, next] = [tokens[of - 1], tokens[of + 1]];
    // "Loose depth before rolling, 0.5 in rolled" asks for the one and tells the other.
    if (last?.kind === 'mark' && last.text === ',') continue;
    const from = next === undefined || next.kind === 'mark' ? titleBefore(sentence, of, titles)?.from : undefined;
    for (let at = from ?? of; at < of; at++) inside.add(at);
  }
  named.set(sentence, inside);
  return inside;
}

/** What was found in sentences: a question is held against the titles again for each goal found in it. */
const found = new WeakMap<Sentence, readonly number[]>();

/** The figures that are part of a title, as the hour is in "mix laid in an hour 80 tons": they are of nothing else. */
export function figuresInTitles(sentence: Sentence, titles: Titles): readonly number[] {
  const before = found.get(sentence);
  if (before) return before;
  const { figures, places } = sentence;
  const asked =
    figures.length > 0 && titleAsked(sentence, titles) ? places.get('what')!.at(-1)! : sentence.tokens.length;
  const spans =
    figures.length > 1
      ? figures.flatMap((of) => {
          const from = titleBefore(sentence, of, titles)?.from;
          return from === undefined ? [] : [{ from, of }];
        })
      : [];
  const inside = figures.filter((at) => at > asked || spans.some(({ from, of }) => from <= at && at < of));
  found.set(sentence, inside);
  return inside;
}

/** The quantity of a sentence that says nothing but a title and its figure: "grade 6 %". */
export function assigned(sentence: Sentence, titles: Titles): QuantityRecord | undefined {
  const [at] = sentence.figures;
  const record = at === undefined || sentence.figures.length > 1 ? undefined : titledBefore(sentence, at, titles);
  const words =
    record && titles().size
      ? [...titles().values()].flat().find((each) => each.record === record)?.words.length
      : undefined;
  return words !== undefined && isAssignment(sentence.tokens, sentence.small, words) ? record : undefined;
}

/** Who does something: "what do I load" asks for no loads. */
const doers = new Set(['do', 'does', 'did', 'i', 'we', 'you', 'he', 'they']);

/** The quantity whose whole title is what a sentence asks for: "…. What is the speed loaded?" */
export function titleAsked({ tokens, places, small }: Sentence, titles: Titles): QuantityRecord | undefined {
  const from = places.get('what')?.at(-1);
  if (from === undefined) return undefined;
  const rest = tokens.slice(from + 1);
  // "What's a lift" asks what it is.
  if (rest[0]?.kind === 'word' && (rest[0].head === 'a' || rest[0].head === 'an')) return undefined;
  if (rest.some((token) => token.kind === 'word' && doers.has(token.head))) return undefined;
  const end = rest.findIndex(
    ({ kind }, at) => kind === 'mark' && rest.slice(at).every((token) => token.kind === 'mark'),
  );
  const asked = rest
    .slice(0, end < 0 ? rest.length : end)
    .filter((token) => token.kind !== 'mark' && !isSmall(token, small));
  if (asked.length === 0 || asked.every(({ kind }) => kind !== 'word')) return undefined;
  if (rest.some((token) => token.kind === 'word' && token.head === 'that')) return undefined;
  const words = asked.map(keyOf);
  return titles()
    .get(words.at(-1)!)
    ?.find((each) => each.words.length === words.length && each.words.every((word, i) => word === words[i]))?.record;
}

/** True when a sentence holds one figure, this many words before it, and nothing after. */
function isAssignment(tokens: readonly Token[], small: ReadonlySet<string>, words: number): boolean {
  const told = tokens.filter((token) => token.kind !== 'mark' && !isSmall(token, small));
  return told.length === words + 1 && told.at(-1)?.kind === 'figure';
}
