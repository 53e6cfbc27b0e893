import type { Figure, Place } from '../calc/read/reading.ts';

/** One place of a sentence: a head word, a figure, a name, or a mark. */
export type Token =
  | { readonly kind: 'word'; readonly head: string; readonly at: Place }
  | {
      readonly kind: 'figure';
      readonly figure: Figure;
      /** What the two parts of a ratio are of, where that was said. */
      readonly names?: readonly [string | undefined, string | undefined];
      readonly at: Place;
    }
  | { readonly kind: 'name' | 'mark'; readonly text: string; readonly at: Place };

/** True for a token that does not count between others. */
export function isSmall(token: Token | undefined, small: ReadonlySet<string>): boolean {
  return token?.kind === 'word' && small.has(token.head);
}
