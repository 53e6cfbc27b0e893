/** Longest question that is read, in characters. */
export const longestQuestion = 2000;
