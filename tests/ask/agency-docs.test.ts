import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

const text = (path: string): string => readFileSync(new URL(`../../docs/${path}`, import.meta.url), 'utf8');

/** The answers that the text on agency files prints: by the general rules, or by the example file that is named. */
const printed = [...text('agency-rules.md').matchAll(/```ask(?: by ([a-z-]+))?\n> (.*)\n([^`]*)\n```/g)].map(
  ([, file, question, reply]) => [question!, file ?? 'the general rules', reply!] as const,
);

test('four questions are answered both ways', () => {
  expect(printed).toHaveLength(8);
  expect(new Set(printed.map(([question]) => question)).size).toBe(4);
});

test.each(printed)('%s, by %s', (question, file, reply) => {
  const agency: unknown = file === 'the general rules' ? undefined : JSON.parse(text(`examples/${file}.json`));
  expect(ask({ question, ...(agency ? { agency } : {}) }).text).toBe(reply);
});
