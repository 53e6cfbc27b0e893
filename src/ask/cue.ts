/**
 * A cue is a line of head words by which a record is asked for. All of them must be in the question, in any order:
 * `a|b` either, `a+b` side by side in this order (small words between do not count), `?a` makes it likelier, `-a` rules
 * it out, `#length` a figure of that dimension, `@check` and `@why` the form of the question.
 */
export interface Cue {
  readonly text: string;
  readonly needs: readonly Term[];
  readonly helps: readonly Term[];
  readonly bars: readonly Term[];
}

/** Alternatives side by side: each place holds the words that will do there. */
export type Term = readonly (readonly string[])[];

/** What a cue is held against. */
export interface Heard {
  /** Positions of each head word, figure dimension (`#length`) and form (`@check`). */
  readonly places: ReadonlyMap<string, readonly number[]>;
  /** The place after `position` that is not a small word. */
  readonly after: (position: number) => number;
}

/**
 * Reads a cue line; `head` gives the head word of a word, `kin` the words that will do as well in its place. Throws
 * SyntaxError when it has no word that must be there.
 */
export function readCue(
  text: string,
  head: (word: string) => string = (word) => word,
  kin: (word: string, isBar: boolean) => readonly string[] = (word) => [word],
): Cue {
  const needs: Term[] = [];
  const helps: Term[] = [];
  const bars: Term[] = [];
  for (const term of text.split(' ')) {
    if (term === '') continue;
    const sign = term[0];
    const list = sign === '?' ? helps : sign === '-' ? bars : needs;
    const body = list === needs ? term : term.slice(1);
    list.push(
      body.split('+').map((place) => [...new Set(place.split('|').flatMap((word) => kin(head(word), list === bars)))]),
    );
  }
  if (needs.length === 0) throw new SyntaxError(`the cue "${text}" has no word that must be there`);
  return { text, needs, helps, bars };
}

/** Every word a cue speaks of. */
export function wordsOf({ needs, helps, bars }: Cue): Set<string> {
  const words = new Set<string>();
  for (const terms of [needs, helps, bars])
    for (const term of terms) for (const place of term) for (const word of place) words.add(word);
  return words;
}

/** Where a question says the words a cue must have: the last place of each, for what is asked stands last. */
export const placesOf = (cue: Cue, heard: Heard): number[] =>
  cue.needs.flat(2).flatMap((word) => heard.places.get(word)?.at(-1) ?? []);

/** True when a term is heard. */
function hears(heard: Heard, term: Term): boolean {
  for (const word of term[0]!) {
    const places = heard.places.get(word);
    if (places && (term.length === 1 || places.some((at) => follows(heard, term, at)))) return true;
  }
  return false;
}

/** True when the rest of a term follows on its first word. */
function follows(heard: Heard, term: Term, first: number): boolean {
  let place = first;
  for (let i = 1; i < term.length; i++) {
    place = heard.after(place);
    if (!term[i]!.some((word) => heard.places.get(word)?.includes(place))) return false;
  }
  return true;
}

/** True when a sentence says all that a cue must have, and nothing that rules it out. */
export function isHeard(cue: Cue, heard: Heard): boolean {
  for (const term of cue.needs) if (!hears(heard, term)) return false;
  for (const term of cue.bars) if (hears(heard, term)) return false;
  return true;
}

/** How well a cue fits: the weights of what it hears; undefined when it does not fit. */
export function fitOf(cue: Cue, heard: Heard, weight: (word: string) => number): number | undefined {
  if (!isHeard(cue, heard)) return undefined;
  let score = 0;
  for (const term of cue.needs) score += weigh(term, heard, weight);
  for (const term of cue.helps) if (hears(heard, term)) score += weigh(term, heard, weight);
  return score;
}

/** Of alternatives heard the commonest counts; words side by side say a little more than apart. */
function weigh(term: Term, { places }: Heard, weight: (word: string) => number): number {
  let sum = term.length - 1;
  for (const words of term) {
    let least = Number.POSITIVE_INFINITY;
    for (const word of words) if (places.has(word)) least = Math.min(least, weight(word));
    sum += least;
  }
  return sum;
}
