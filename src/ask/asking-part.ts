import type { Cue } from './cue.ts';
import type { Sentence } from './sentence.ts';
import { openingHeads } from './wording/asking.ts';

/** The part of a sentence that asks, from one place to another, the last not included. */
type Part = readonly [from: number, to: number];

/**
 * The one part between marks that asks, where the other parts give figures: "12 wide, 300 long, 15 ton trucks. How many
 * lifts is that?" Undefined where none or several ask, or where nothing is told apart from it.
 */
function askingPart({ tokens, places, figures }: Sentence): Part | undefined {
  if (figures.length === 0) return undefined;
  const marks = tokens.flatMap(({ kind }, at) => (kind === 'mark' ? [at] : []));
  const parts = [-1, ...marks].map((mark, i): Part => [mark + 1, marks[i] ?? tokens.length]);
  const asks = parts.filter((part) => openingHeads.some((head) => places.get(head)?.some((at) => isIn(part, at))));
  const [one, ...others] = asks.length > 0 ? asks : lastWords(parts, figures);
  return one && others.length === 0 && figures.some((at) => !isIn(one, at)) ? one : undefined;
}

/** The words at the end that stand by themselves, where nothing opens a question: "7 loads went over 850 sq yd, thickness?" */
function lastWords(parts: readonly Part[], figures: readonly number[]): Part[] {
  const last = parts.filter(([from, to]) => to > from).at(-1);
  return last && last[1] - last[0] <= mostLast && !figures.some((at) => isIn(last, at)) ? [last] : [];
}

/** More words than these are a clause of their own. */
const mostLast = 4;

/** What it counts for a cue that all its words stand in the part that asks, only some, or none of them. */
const weights = { whole: 2, some: -4, none: -12 };

/** What was heard, each weighed by how far it stands in the part that asks, where that part says enough by itself. */
export function inAskingPart<T extends { readonly kind: string; readonly cue: Cue; readonly score: number }>(
  heard: readonly T[],
  sentence: Sentence,
): readonly T[] {
  const part = askingPart(sentence);
  if (!part) return heard;
  const stands = heard.map(({ cue }) => standing(cue, part, sentence));
  if (!stands.includes('whole')) return heard;
  // What is done and what went wrong is told in the other parts too; a figure is asked for in this one.
  return heard.map((each, i) =>
    each.kind === 'quantity' ? { ...each, score: each.score + weights[stands[i]!] } : each,
  );
}

function standing({ needs }: Cue, part: Part, { places }: Sentence): keyof typeof weights {
  const words = needs.filter(([first]) => !first!.every((word) => word.startsWith('@') || word.startsWith('#')));
  const inside = words.filter((term) =>
    term.every((list) => list.some((word) => places.get(word)?.some((at) => isIn(part, at)))),
  );
  return inside.length === words.length ? 'whole' : inside.length === 0 ? 'none' : 'some';
}

const isIn = ([from, to]: Part, at: number): boolean => at >= from && at < to;
