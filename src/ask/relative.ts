import { convert } from '../calc/quantity.ts';
import { unitRow } from '../calc/units.ts';
import type { Engine } from './engine.ts';
import type { Fact } from './facts.ts';
import type { Sentence } from './sentence.ts';
import type { Token } from './token.ts';
import { grows, times } from './wording/relative.ts';

/** Figures of the job told anew by what they were, and the places of the figures that say by how much. */
export interface Relative {
  readonly facts: readonly Fact[];
  readonly spent: readonly number[];
}

type Kept = Fact & { readonly number: number };

const nothing: Relative = { facts: [], spent: [] };

/** "Double the length", "half as wide", "10 ft longer": the figures of the job that change so. */
export function relativeTo({ byWord }: Engine, sentence: Sentence, kept: readonly Fact[], turn: number): Relative {
  if (kept.length === 0) return nothing;
  const { tokens, after } = sentence;
  const facts: Fact[] = [];
  const spent: number[] = [];
  /** The figure of the job that a word speaks of, a side of the patch before others. */
  const spokenOf = (word: string | undefined): Kept | undefined => {
    const records = word === undefined ? [] : (byWord.get(word) ?? []);
    const sides = records.filter(({ inGroup }) => inGroup);
    return [...sides, ...records]
      .map(({ id }) => kept.find((fact) => fact.quantity === id && 'unit' in fact))
      .find((fact) => fact !== undefined) as Kept | undefined;
  };
  const tell = (fact: Kept, number: number): void => {
    if (!('unit' in fact) || number <= 0) return;
    facts.push({ quantity: fact.quantity, number, unit: fact.unit, turn, fresh: true });
  };
  tokens.forEach((token, at) => {
    const by = timesOf(token);
    // "Half a drum" is a measure of its own.
    const isOne = token.kind === 'figure' && token.at[1] - token.at[0] > 'half'.length;
    const of = by === undefined || isOne ? undefined : spokenOf(headOf(tokens[after(at)]));
    if (by !== undefined && of) {
      tell(of, of.number * by);
      if (token.kind === 'figure') spent.push(at);
    }
    const grown = token.kind === 'word' ? grows.get(token.head) : undefined;
    const size = tokens[at - 1];
    const what = grown && spokenOf(grown.of);
    if (!grown || !what || !('unit' in what) || size?.kind !== 'figure') return;
    const unit = size.figure.unit ?? what.unit;
    if (unitRow(unit).dimension !== unitRow(what.unit).dimension) return;
    tell(what, what.number + grown.sign * convert(size.figure.number, unit, what.unit));
    spent.push(at - 1);
  });
  return facts.length > 0 ? { facts, spent } : nothing;
}

/** How many times as much a word asks for; a half is read as a figure. */
function timesOf(token: Token): number | undefined {
  if (token.kind === 'word') return times.get(token.head);
  if (token.kind !== 'figure') return undefined;
  const { number, unit, form } = token.figure;
  return number === 0.5 && form === 'spelled' && unit === undefined ? number : undefined;
}

const headOf = (token: Token | undefined): string | undefined => (token?.kind === 'word' ? token.head : undefined);
