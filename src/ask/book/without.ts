/** A question with a part of it blanked: every other word keeps its place. */
export const without = (question: string, [start, end]: readonly [number, number]): string =>
  question.slice(0, start) + ' '.repeat(end - start) + question.slice(end);
