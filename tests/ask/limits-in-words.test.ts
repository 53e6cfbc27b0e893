import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Verdict } from '../../src/ask/reply.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { sayFacts } from './said-facts.ts';

/**
 * Questions by which each limit is asked for, without the figures it needs. `holds`, `at` and `beyond` put the same with a
 * figure that holds, one that is the bound itself, and one that breaks it; where they are not written, they are made of the
 * question and the examples of the record. `is` stands for what comes out, where that is told without any figure, and an
 * empty `at` for a bound that no figure meets, each for its `reason`.
 */
interface Line {
  readonly limit: string;
  readonly ask: string;
  readonly holds?: string;
  readonly at?: string;
  readonly beyond?: string;
  readonly is?: 'stop';
  readonly reason?: string;
}

const lines = readFileSync(new URL('../corpus/limits.jsonl', import.meta.url), 'utf8')
  .split('\n')
  .filter(Boolean)
  .map((line) => JSON.parse(line) as Line);
const firsts = lines.filter(({ limit }, at) => lines.findIndex((line) => line.limit === limit) === at);

const nameOf = (id: string): string => knowledge.limits.get(id)!.underRule ?? id;

/** What a reply says by a limit: its verdict, or the check beside it. */
const saidBy = (question: string, id: string): Verdict[] => {
  const { verdict, checks } = ask({ question });
  return [...(verdict ? [verdict] : []), ...checks].filter(
    ({ rule }) => rule === nameOf(id) || rule === knowledge.limits.get(id)!.besideRule,
  );
};

test('every limit is asked for in words', () => {
  expect([...knowledge.limits.keys()].filter((id) => !firsts.some(({ limit }) => limit === id))).toEqual([]);
  expect(lines.filter(({ limit }) => !knowledge.limits.has(limit))).toEqual([]);
});

describe('without the figures it needs, it cannot be told, and what would settle it is named', () => {
  test.each(lines.map((line) => [`${line.limit}: ${line.ask}`, line] as const))(
    '%s',
    (_, { limit, ask: question, is }) => {
      const { verdict, kind, text } = ask({ question });
      expect(kind, text).toBe('verdict');
      // A rule shown beside another is told under that one while nothing is given.
      expect([nameOf(limit), knowledge.limits.get(limit)!.besideRule], text).toContain(verdict!.rule);
      expect(verdict!.status, text).toBe(is ?? 'cannot-tell');
      if (!is) expect(verdict!.needs?.length, text).toBeGreaterThan(0);
    },
  );
});

describe.each(firsts.map((line) => [line.limit, line] as const))(
  'the figure of the asker is judged by %s',
  (id, line) => {
    const { holds, boundary, breaks } = knowledge.limits.get(id)!.examples;
    const judged = (question: string, ...wanted: string[]): void => {
      const said = saidBy(question, id);
      expect(
        said.some(({ status }) => wanted.includes(status)),
        `${question}\n${ask({ question }).text}`,
      ).toBe(true);
    };

    test('inside', () => judged(line.holds ?? `${line.ask}, ${sayFacts(holds)}`, 'ok'));
    if (line.at !== '') test('at the bound', () => judged(line.at ?? `${line.ask}, ${sayFacts(boundary)}`, 'ok'));
    test('beyond', () => judged(line.beyond ?? `${line.ask}, ${sayFacts(breaks)}`, 'caution', 'stop'));
  },
);
