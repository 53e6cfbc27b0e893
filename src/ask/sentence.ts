import type { Figure, Item } from '../calc/read/reading.ts';
import { unitRow } from '../calc/units.ts';
import { placesAfterRight } from '../rules/words-crew.ts';
import type { Heard } from './cue.ts';
import { joinParts } from './named-parts.ts';
import { isSmall, type Token } from './token.ts';
import type { Vocabulary } from './vocabulary.ts';
import { isYesOrNo } from './yes-or-no.ts';

/** A question read into head words and figures, ready to be held against cues and roles. */
export interface Sentence extends Heard {
  readonly tokens: readonly Token[];
  /** Positions of the figures among the tokens. */
  readonly figures: readonly number[];
  readonly small: ReadonlySet<string>;
}

/** What was spoken of before a sentence: the heads of its words. */
export interface Spoken {
  readonly of: readonly string[];
}

/**
 * Reads items into a sentence. `small` are words that do not count between others. One that goes on with what was spoken of
 * speaks of it too where it says "it", and `@after` marks it.
 */
export function sentenceOf(
  items: readonly Item[],
  vocabulary: Vocabulary,
  small: ReadonlySet<string>,
  before?: Spoken,
): Sentence {
  const tokens = joinParts(joinPhrases(items, vocabulary), small);
  const places = new Map<string, number[]>();
  const put = (key: string, at: number): void => {
    const list = places.get(key);
    if (list) list.push(at);
    else places.set(key, [at]);
  };
  const figures: number[] = [];
  tokens.forEach((token, at) => {
    if (token.kind === 'word') put(token.head, at);
    if (token.kind === 'name') put(token.text.toLowerCase().replaceAll(' ', '-'), at);
    if (token.kind === 'name' && isLate(token.text)) put('night', at);
    if (token.kind === 'figure') {
      figures.push(at);
      put('#figure', at);
      const counted = token.figure.unit ? undefined : countWords[token.figure.number];
      if (counted) put(counted, at);
      if (isThin(token.figure)) put('#thin', at);
      if (token.figure.trend) put(token.figure.trend, at);
      if (token.figure.unit) put(`#${unitRow(token.figure.unit).dimension}`, at);
      else if (token.figure.form === 'ratio') put('#parts', at);
      else put(token.figure.trend ? '#temperature' : '#number', at);
    }
  });
  const [opening] = items;
  const isFiller = opening?.kind === 'word' && fillers.has(opening.text);
  if (isYesOrNo(tokens, places, small, isFiller)) put('@check', -1);
  if (places.has('why')) put('@why', -1);
  if (enoughWords.some((word) => typed(items, word))) put('@enough', -1);
  if (supplyWords.some((word) => typed(items, word))) put('@supply', -1);
  if (before) {
    put('@after', -1);
    if (standIns.some((word) => places.has(word))) for (const head of before.of) if (!places.has(head)) put(head, -1);
  }
  const after = (position: number): number => {
    let at = position + 1;
    while (isSmall(tokens[at], small) || isSlash(tokens[at])) at++;
    return at;
  };
  return { tokens, figures, small, places, after };
}

/** Words that stand for what was spoken of. */
const standIns = ['it', 'its', 'they', 'them', 'one', 'ours', 'our', 'that', 'this'];

/** "9pm", "4:30 am": a time of day in the dark. */
function isLate(text: string): boolean {
  const [, hour, half] = /^(\d{1,2})(?::\d{2})?\s?([ap])\.?m/i.exec(text) ?? [];
  if (!hour || !half) return false;
  const of24 = (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return of24 >= 20 || of24 < 5;
}

/** "Ft/ton": what a stroke joins stands side by side. */
const isSlash = (token: Token | undefined): boolean => token?.kind === 'mark' && token.text === '/';

/** Words that people begin with and ask nothing by. */
const fillers = new Set(['ok', 'okay', 'alright', 'okey', 'good', 'right']);

/** True for a figure such as lifts have: inches or millimetres, or a bare one that is small and no count. */
const isThin = ({ unit, number, form }: Figure): boolean =>
  form !== 'ratio' &&
  (unit === 'in' || unit === 'mm' || unit === 'cm' || (unit === undefined && number < 4 && !Number.isInteger(number)));

/** Words that ask whether it will do for the need. */
const supplyWords = ['enough', 'enuf', 'enuff', 'sufficient', 'plenty', 'adequate', 'suffice'];
const enoughWords = [...supplyWords, 'short', 'cover', 'reach'];

const typed = (items: readonly Item[], word: string): boolean =>
  items.some((item) => item.kind === 'word' && item.text === word);

/** Small counts are words too: "all in one go", "1 lift". */
const countWords: Readonly<Record<number, string>> = {
  1: 'one',
  2: 'two',
  3: 'three',
  4: 'four',
  5: 'five',
  6: 'six',
};

/** How a word ends that speaks of several. */
const isMany = /[^s]s$/;

/** Words read into heads; an alias of several words becomes one token. */
function joinPhrases(items: readonly Item[], vocabulary: Vocabulary): Token[] {
  const tokens: Token[] = [];
  const words = items.map((item) => (item.kind === 'word' ? item.text : undefined));
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!;
    if (item.kind === 'figure') tokens.push({ kind: 'figure', figure: item, at: item.at });
    else if (item.kind !== 'word') tokens.push({ kind: item.kind, text: item.text, at: item.at });
    else {
      const phrase = vocabulary.phrase(words, i);
      const last = items[i + (phrase?.length ?? 1) - 1]!;
      const own = isRightThere(items, i) ? 'right-there' : isAlso(items, i) ? 'also' : undefined;
      const head = phrase?.head ?? own ?? vocabulary.head(item.text);
      const many = last.kind === 'word' && isMany.test(last.text) ? ({ many: true } as const) : {};
      tokens.push({ kind: 'word', head, at: [item.at[0], last.at[1]], ...many });
      i += (phrase?.length ?? 1) - 1;
    }
  }
  return tokens;
}

/** "Right where it starts" tells a place; "right?" asks. */
function isRightThere(items: readonly Item[], at: number): boolean {
  const [item, next] = [items[at], items[at + 1]];
  return item?.kind === 'word' && item.text === 'right' && next?.kind === 'word' && placesAfterRight.has(next.text);
}

/** "Cleaned up too": a word that adds, where it ends what asks nothing. */
function isAlso(items: readonly Item[], at: number): boolean {
  const [item, next, before] = [items[at], items[at + 1], items[at - 1]];
  return (
    item?.kind === 'word' &&
    item.text === 'too' &&
    before?.kind === 'word' &&
    (next === undefined || (next.kind === 'mark' && next.text !== '?'))
  );
}
