import type { QuizItem } from '../../reply.ts';

/** Letter of an option by its place. */
export const letterAt = (at: number): string => String.fromCharCode(65 + at);

/** The key as letters: one, several, or in order; none for a figure. */
export function keyLetters({ key, options, kind }: QuizItem): string[] {
  if (kind === 'number') return [];
  const keys = typeof key === 'object' ? key : [String(key)];
  const letters = keys.map((each) => letterAt(options.findIndex(({ text }) => text === each)));
  return kind === 'order' ? letters : letters.sort();
}
