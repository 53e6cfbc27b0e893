import { toBase } from '../../calc/quantity.ts';
import type { Figure } from '../../calc/read/reading.ts';
import type { Span } from '../reply.ts';
import type { Sentence } from '../sentence.ts';
import type { Token } from '../token.ts';
import { paceWords as words } from '../wording/book-talk.en.ts';

/** Loads as they are counted: "2 of 5 loads gone", "1 load left of 4", "3 loads left", "half the loads". */
export interface LoadsHeard {
  /** Loads that are down, and that there are in all, where that is said; a share of them counts as so much of one. */
  readonly down?: number;
  readonly all?: number;
  /** Loads that are still to come. */
  readonly left?: number;
  readonly isShare?: true;
  readonly at: readonly Span[];
}

/** How far it has come, from 0 to 1: "half way", "40 % of the patch", "two thirds through". */
export interface ShareHeard {
  readonly share: number;
  readonly at: readonly Span[];
}

/** What is still to be laid: "38 tons to go", "100 ft to go". */
export interface ToGoHeard {
  readonly figure: Figure & { readonly unit: NonNullable<Figure['unit']> };
}

export interface PaceHeard {
  readonly loads: LoadsHeard;
  readonly share?: ShareHeard;
  readonly toGo?: ToGoHeard;
}

/** Listens for a report of loads against how far they reached, or against what is still to go. Undefined where one of the two is not told. */
export function paceIn(sentence: Sentence): PaceHeard | undefined {
  const tokens = sentence.tokens.filter((token) => token.kind !== 'word' || !words.skipped.includes(token.head));
  const loads = loadsIn(tokens);
  if (!loads) return undefined;
  const share = shareIn(tokens);
  const toGo = toGoIn(tokens);
  return { loads, ...(share ? { share } : {}), ...(toGo ? { toGo } : {}) };
}

const isWord = (token: Token | undefined, heads: readonly string[]): boolean =>
  token?.kind === 'word' && heads.includes(token.head);

/** A bare figure, whole and above nothing. */
function countAt(token: Token | undefined): number | undefined {
  if (token?.kind !== 'figure') return undefined;
  const { number, unit, low, group } = token.figure;
  return !unit && low === undefined && group === undefined && Number.isInteger(number) && number > 0
    ? number
    : undefined;
}

/** A part of one: "half", "a third", "two thirds", "40 %". */
function partAt(token: Token | undefined): number | undefined {
  if (token?.kind === 'word') return words.parts[token.head];
  if (token?.kind !== 'figure') return undefined;
  const { number, unit } = token.figure;
  if (unit === '%') return number > 0 && number <= 100 ? number / 100 : undefined;
  return !unit && number > 0 && number < 1 ? number : undefined;
}

function loadsIn(tokens: readonly Token[]): LoadsHeard | undefined {
  for (const [at, token] of tokens.entries()) {
    if (!isWord(token, words.load)) continue;
    const near = tokens.slice(at + 1, at + 4);
    const stop = near.findIndex((each) => each.kind === 'mark');
    const isLeft = (stop < 0 ? near : near.slice(0, stop)).some((each) => isWord(each, words.left));
    const [before, of, first] = [tokens[at - 1], tokens[at - 2], tokens[at - 3]];
    const count = countAt(before);
    // "2 of 5 loads".
    const part = isWord(of, words.of) ? countAt(first) : undefined;
    if (count !== undefined && part !== undefined && part <= count)
      return counted(part, count, isLeft, [first!, before!]);
    // "4 loads of 6", "1 load left of 4".
    if (count !== undefined) {
      const next = tokens.findIndex((each, i) => i > at && i <= at + 3 && isWord(each, words.of));
      const all = next > 0 && !isWord(tokens[next + 2], words.measured) ? countAt(tokens[next + 1]) : undefined;
      if (all !== undefined && count <= all) return counted(count, all, isLeft, [before!, tokens[next + 1]!]);
      return isLeft ? { left: count, at: [before!.at] } : undefined;
    }
    // "Half the loads", "a third of the loads".
    const share = partAt(before) ?? (isWord(before, words.of) ? partAt(of) : undefined);
    if (share !== undefined) return { down: isLeft ? 1 - share : share, all: 1, isShare: true, at: [] };
  }
  return undefined;
}

const counted = (part: number, all: number, isLeft: boolean, said: readonly Token[]): LoadsHeard => ({
  down: isLeft ? all - part : part,
  all,
  left: isLeft ? part : all - part,
  at: said.map(({ at }) => at),
});

function shareIn(tokens: readonly Token[]): ShareHeard | undefined {
  for (const [at, token] of tokens.entries()) {
    const part = partAt(token);
    if (part === undefined) continue;
    if (isWord(token, words.halfway)) return { share: part, at: [token.at] };
    const next = isWord(tokens[at + 1], words.of) ? tokens[at + 2] : tokens[at + 1];
    if (isWord(next, words.patch)) return { share: part, at: [token.at] };
  }
  return undefined;
}

/** A mass or a length right before "to go", "more", "still". */
function toGoIn(tokens: readonly Token[]): ToGoHeard | undefined {
  for (const [at, token] of tokens.entries()) {
    if (token.kind !== 'figure' || !token.figure.unit || !words.toGoUnits.includes(token.figure.unit)) continue;
    const [first, second] = [tokens[at + 1], tokens[at + 2]];
    if (isWord(first, words.more) || (isWord(first, ['to']) && isWord(second, words.go)))
      return { figure: { ...token.figure, unit: token.figure.unit } };
  }
  return undefined;
}

/** What is to go in base units, and whether it is told in tons. */
export const toGoBase = ({ figure }: ToGoHeard): { base: number; isMass: boolean } => ({
  base: toBase(figure.number, figure.unit),
  isMass: words.massUnits.includes(figure.unit),
});

/** True where both sides are told: loads and how far they reached, or loads to come and what is to go. */
export const isWhole = ({ loads, share, toGo }: PaceHeard): boolean =>
  share !== undefined || (toGo !== undefined && loads.left !== undefined);
