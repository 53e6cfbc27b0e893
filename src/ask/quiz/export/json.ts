import type { QuizSet } from '../build.ts';

/** A set as JSON, two spaces deep, with a line break at the end. */
export const asJson = (set: QuizSet): string => `${JSON.stringify(set, null, 2)}\n`;
