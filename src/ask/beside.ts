import type { Figure } from '../calc/read/reading.ts';
import type { Sentence } from './sentence.ts';
import { isSmall } from './token.ts';
import { askingHeads } from './wording/asking.ts';

/** Head words on the two sides of a figure, nearest first. */
export interface Words {
  readonly before: readonly string[];
  readonly after: readonly string[];
  /** A word that does not count between others, where it stands right before: "from 800 to 650". */
  readonly right: string | undefined;
  /** The word right after, nothing between: a "15 ton truck" is no "15 tons on a truck". */
  readonly next: string | undefined;
}

/** Words looked at on either side. */
const reach = 4;
/** More than this is no count of what a figure right after it is of. */
const mostCounted = 40;

/** "Two 20 ft feathers", "three 10 x 20 patches": a number right before a figure counts what that figure is of. The place of the last such figure. */
export function countedAt({ tokens }: Sentence, at: number, figure: Figure): number | undefined {
  const next = tokens[at + 1];
  const counts = Number.isInteger(figure.number) && figure.number > 1 && figure.number <= mostCounted;
  if (figure.unit || !counts || figure.group !== undefined || figure.form === 'ratio' || next?.kind !== 'figure')
    return undefined;
  let last = at + 1;
  while (tokens[last + 1]?.kind === 'figure') last++;
  return last;
}

/** "12 wide, not 10": the figure after a "not" is the one that is taken back. */
export function isDenied({ tokens, small }: Sentence, at: number): boolean {
  let before = at - 1;
  while (isSmall(tokens[before], small)) before--;
  const token = tokens[before];
  return token?.kind === 'word' && token.head === 'not';
}

/** Words that part one figure's words from another's, or begin the question. */
export const breaks: ReadonlySet<string> = new Set([
  ...'and y plus then with con but or not'.split(' '),
  ...askingHeads,
]);

/** Words that give a figure to the thing before them: "loads at 20 tons", "loads of 15". */
const leads: ReadonlySet<string> = new Set(['at', 'of']);

/** Head words before and after a figure, nearest first, as far as the next figure or mark. A word spent on the question tells nothing, unless it comes right after the figure or gives it away. */
export function wordsBeside(sentence: Sentence, at: number, spent: ReadonlySet<number>): Words {
  const last = sentence.tokens[at - 1];
  const isLed = last?.kind === 'word' && leads.has(last.head);
  const collect = (step: 1 | -1): string[] => {
    const words: string[] = [];
    for (let i = at + step; words.length < reach; i += step) {
      const token = sentence.tokens[i];
      if (token?.kind !== 'word' || breaks.has(token.head)) break;
      const next = step === 1 ? words.length === 0 : i === at - 2 && isLed;
      if (!isSmall(token, sentence.small)) words.push(spent.has(i) && !next ? '' : token.head);
    }
    return words;
  };
  const right = last?.kind === 'word' && isSmall(last, sentence.small) ? last.head : undefined;
  const first = sentence.tokens[at + 1];
  const next = first?.kind === 'word' && !isSmall(first, sentence.small) ? first.head : undefined;
  return { before: collect(-1), after: collect(1), right, next };
}
