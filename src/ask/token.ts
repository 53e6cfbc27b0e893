import type { Figure, Place } from '../calc/read/reading.ts';

/** One place of a sentence: a head word, a figure, a name, or a mark. */
export type Token =
  | {
      readonly kind: 'word';
      readonly head: string;
      readonly at: Place;
      /** True for one typed as several: "ruts". */
      readonly many?: true;
    }
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

/** "Ruts 2, …": a plural right before a whole number that ends its part; "lift 2" is the second of them. */
export function isCount(tokens: readonly Token[], at: number): boolean {
  const [before, figure, after] = [tokens[at - 1], tokens[at], tokens[at + 1]];
  return (
    before?.kind === 'word' &&
    before.many === true &&
    figure?.kind === 'figure' &&
    figure.figure.unit === undefined &&
    Number.isInteger(figure.figure.number) &&
    (after === undefined || after.kind === 'mark')
  );
}
