import { readFileSync } from 'node:fs';

/** The questions that are asked in a bench: what crews type, one a line. */
export function questions(): string[] {
  const lines = readFileSync('tests/corpus/questions.txt', 'utf8')
    .split('\n')
    .map((line) => line.trim());
  return lines.filter((line) => line !== '' && !line.startsWith('#'));
}

/** A question of every stage: figures to read, a goal to find, a value to work out and rules to judge. */
export const typicalQuestion = 'how many tons for a patch 300 ft by 12 ft at 2 inches';
