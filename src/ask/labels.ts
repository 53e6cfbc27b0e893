import type { Figure } from '../calc/read/reading.ts';
import { breaks, type Words, wordsBeside } from './beside.ts';
import type { Context } from './role-context.ts';
import { couldMeasure } from './role-unit.ts';
import type { Sentence } from './sentence.ts';
import { isSmall } from './token.ts';

/** The words beside a figure, less those that are the label of the next one: in "air 50 mat 290" the mat is no word on the 50. */
export function ownWords(sentence: Sentence, at: number, figure: Figure, { spent, byWord, weak }: Context): Words {
  const words = withLabelBefore(
    sentence,
    at,
    lessTheLastOnes(sentence, at, wordsBeside(sentence, at, spent), byWord),
    byWord,
  );
  if (words.after.length !== 1 || figure.unit) return words;
  const { tokens } = sentence;
  const next = tokens.findIndex(({ kind }, i) => i > at && kind !== 'word');
  const [token, last] = [tokens[next], tokens[at - 2]];
  // "12 wide 300 long" has its words behind, and in "0.05 residual on 12 x 300" the sides need none.
  if (
    token?.kind !== 'figure' ||
    token.figure.group !== undefined ||
    tokens[next + 1]?.kind === 'word' ||
    (last?.kind === 'figure' && !last.figure.unit)
  )
    return words;
  const labels = (word: string | undefined, of: Figure): boolean =>
    word !== undefined &&
    (byWord.get(word) ?? []).some((record) => record.roles?.before?.includes(word) && couldMeasure(of, record));
  // "11 empty and carries 13" parts them; "at" labels nothing.
  const isParted = tokens.slice(at + 1, next).some((each) => each.kind === 'word' && breaks.has(each.head));
  if (isParted || (words.before[0] !== undefined && weak.has(words.before[0]))) return words;
  const isLabel = labels(words.before[0], figure) && labels(words.after[0], token.figure);
  return isLabel ? { ...words, after: [], next: undefined } : words;
}

/** "3/4 in deep for 800 ft": the depth is told of the figure before it, not of the one after. */
function lessTheLastOnes({ tokens, small }: Sentence, at: number, words: Words, byWord: Context['byWord']): Words {
  const place = tokens.findLastIndex((token, i) => i < at && !isSmall(token, small));
  const [word, last] = [tokens[place], tokens[place - 1]];
  if (place === at - 1 || word?.kind !== 'word' || last?.kind !== 'figure' || !last.figure.unit) return words;
  const isOfLast = (byWord.get(word.head) ?? []).some(
    (record) => record.roles?.after?.includes(word.head) && couldMeasure(last.figure, record),
  );
  return isOfLast && words.before[0] === word.head ? { ...words, before: words.before.slice(1) } : words;
}

/** "We measured the roll-down, it was 1.35": a clause that says no more than the figure has its label in the one before. */
function withLabelBefore(sentence: Sentence, at: number, words: Words, byWord: Context['byWord']): Words {
  const { tokens, small } = sentence;
  if (words.before.length > 0 || words.after.length > 0) return words;
  const isMark = (i: number): boolean => tokens[i]?.kind === 'mark' && tokens[i].text !== '/';
  let from = at;
  while (from > 0 && !isMark(from - 1)) from--;
  let to = at;
  while (to < tokens.length - 1 && !isMark(to + 1)) to++;
  const clause = tokens.slice(from, to + 1);
  const isIt = clause.length > 1 && clause.every((token, i) => i === at - from || isSmall(token, small));
  if (!isIt || from < 2) return words;
  let start = from - 1;
  while (start > 0 && tokens[start - 1]?.kind === 'word') start--;
  if (tokens[start - 1]?.kind === 'figure') return words;
  const labels = tokens
    .slice(start, from - 1)
    .flatMap((token) => (token.kind === 'word' ? [token.head] : []))
    .filter((word) => (byWord.get(word) ?? []).some(({ roles }) => roles?.before?.includes(word)));
  return labels.length > 0 ? { ...words, before: labels.reverse() } : words;
}
