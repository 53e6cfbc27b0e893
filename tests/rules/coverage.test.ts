import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { recordAt } from '../../src/ask/reference.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { RuleRecord } from '../../src/rules/shapes.ts';
import { root } from '../laws/sources.ts';
import { wantedQuantities, wantedRules } from './wanted.ts';

const page = (name: string): string => readFileSync(join(root, 'docs/rulebook', `${name}.md`), 'utf8');
const pages = { quantity: page('quantities'), limit: page('limits'), practice: page('practices') };

/** True where something asks for it in words: cues, a question, roles of its own, or another record that shows it. */
function isReachable({ id }: RuleRecord): boolean {
  const record = knowledge.quantities.get(id);
  const beside = [...knowledge.quantities.values()].some(({ beside: shown }) => shown?.includes(id));
  return Boolean(record?.cues?.length || record?.asks || record?.roles || beside);
}

function isWhole(record: RuleRecord | undefined, kind: keyof typeof pages): void {
  expect(record, 'there is a record').toBeDefined();
  expect(record!.title).not.toBe('');
  expect(record!.because.length).toBeGreaterThan(10);
  expect(record!.sources.length).toBeGreaterThan(0);
  for (const { document, seen } of record!.sources) {
    expect(document).not.toBe('');
    expect(seen).toMatch(/^(?:read|restated|memory|practice|derived)$/);
  }
  expect(recordAt(`${kind}/${record!.id}`)).toBe(record);
  expect(pages[kind]).toContain(`\n## ${record!.id}\n`);
}

describe('every quantity of a crew', () => {
  test.each(wantedQuantities)(
    '%s has its record, its sources, its place in the rule book, and is reached in words',
    (id) => {
      const record = knowledge.quantities.get(id);
      isWhole(record, 'quantity');
      expect(isReachable(record!)).toBe(true);
    },
  );

  test('each is found by a relation or given by a person', () => {
    const found = new Set([...knowledge.relations.values()].map(({ finds }) => finds.id));
    const lost = wantedQuantities.filter((id) => {
      const { roles, question, default: usual } = knowledge.quantities.get(id)!;
      return !found.has(id) && !roles && !question && !usual;
    });
    expect(lost).toEqual([]);
  });
});

describe('every rule of a crew', () => {
  test.each(wantedRules)(
    '%s has its record, its sources, its place in the rule book, and is asked for in words',
    (id) => {
      const limit = knowledge.limits.get(id);
      const practice = knowledge.practices.get(id);
      isWhole(limit ?? practice, limit ? 'limit' : 'practice');
      expect((limit ?? practice)!.cues?.length).toBeGreaterThan(0);
    },
  );
});

test('a bare conversion is answered as one', () => {
  // 25.4 mm to the inch.
  const reply = ask({ question: '2 inches in mm' });
  expect([reply.topic, reply.values[0]?.number]).toEqual(['conversion', 50.8]);
});
