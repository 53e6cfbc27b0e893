import { describe, expect, test } from 'vitest';
import * as index from '../../src/rules/index.generated.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Base } from '../../src/rules/shapes.ts';

type AnyRecord = Base & { readonly kind: string };

const records = Object.values(index).flat() as unknown as AnyRecord[];
const named = records.map((record) => [`${record.kind}/${record.id}`, record] as const);
const steps: readonly AnyRecord[] = index.steps;

/** Every sentence of a record: its strings, however deep, but not those of the records it points at. */
function sentencesOf(value: unknown, depth = 0): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  if (depth > 0 && 'kind' in value && 'id' in value) return [];
  return Object.values(value).flatMap((part) => sentencesOf(part, depth + 1));
}

/** Names of their own that the sentences of a kind may use. */
const own: Readonly<Record<string, readonly string[]>> = { limit: ['on', 'limit'], step: ['lift'] };

/** A name in a sentence: a quantity, a choice, the bound of a limit (`max:lift-max`), or one of the kind's own. */
function known(kind: string, name: string): boolean {
  const [end, limit] = name.split(':');
  if (limit !== undefined) return (end === 'max' || end === 'min') && knowledge.limits.has(limit);
  return knowledge.quantities.has(name) || knowledge.choices.has(name) || (own[kind]?.includes(name) ?? false);
}

describe('every record', () => {
  test.each(named)('%s has a title that stands inside a sentence', (_, { title }) => {
    expect(title).toMatch(/^[\p{Ll}\d]/u);
    expect(title).not.toMatch(/[.!?]$/);
  });

  test.each(named)('%s says why, and not the rule again', (_, record) => {
    const said = record.because.trim().toLowerCase();
    expect(said.split(/\s+/).length, record.because).toBeGreaterThanOrEqual(4);
    expect(said.replace(/\.$/, '')).not.toBe(record.title.toLowerCase());
    const others = sentencesOf({ ...record, because: '' }).map((text) => text.trim().toLowerCase());
    expect(others).not.toContain(said);
  });

  test.each(named)('%s has a source, and says how it was seen', (_, { sources }) => {
    expect(sources.length).toBeGreaterThan(0);
    for (const source of sources) {
      expect(source.document.trim()).not.toBe('');
      expect(['read', 'restated', 'memory', 'practice', 'derived']).toContain(source.seen);
      if (source.seen === 'read' || source.seen === 'restated') {
        expect(Boolean(source.place || source.issuer), `${source.document}: where in it, or who issued it`).toBe(true);
      }
      if (source.seen === 'practice') expect(source.document).toMatch(/^common practice/);
    }
  });

  test.each(named)('%s speaks only of figures that there are', (_, record) => {
    const places = sentencesOf(record).flatMap((text) =>
      [...text.matchAll(/\{([^{}]{0,80})\}/g)].map(([, name]) => name!),
    );
    expect(places.filter((name) => !known(record.kind, name))).toEqual([]);
  });
});

describe('what records name', () => {
  test('stands beside a figure only what there is', () => {
    const lost = [...knowledge.quantities.values()].flatMap(({ id, beside = [] }) =>
      beside.filter((other) => !knowledge.quantities.has(other)).map((other) => `${id}: ${other}`),
    );
    expect(lost).toEqual([]);
  });

  test('figures are used at steps that there are', () => {
    const known = new Set(steps.map(({ id }) => id));
    const lost = [...knowledge.quantities.values()].flatMap(({ id, usedAt = [] }) =>
      usedAt.filter((step) => !known.has(step)).map((step) => `${id}: ${step}`),
    );
    expect(lost).toEqual([]);
  });

  test('a rule stands beside a rule that there is', () => {
    const lost = [...knowledge.limits.values()].filter(
      ({ besideRule }) => besideRule && !knowledge.limits.has(besideRule) && !knowledge.practices.has(besideRule),
    );
    expect(lost.map(({ id }) => id)).toEqual([]);
  });

  test('an option that is taken by default, judged or tabled is an option', () => {
    const lost: string[] = [];
    for (const { id, default: taken, options } of knowledge.choices.values()) {
      if (taken && !options.some((option) => option.id === taken)) lost.push(`${id}: ${taken}`);
    }
    for (const { id, on, judged } of knowledge.practices.values()) {
      for (const option of Object.keys(judged))
        if (!on.options.some((each) => each.id === option)) lost.push(`${id}: ${option}`);
    }
    for (const { id, when = [] } of [
      ...knowledge.relations.values(),
      ...knowledge.limits.values(),
      ...knowledge.practices.values(),
    ]) {
      for (const { choice, is } of when) {
        for (const option of is)
          if (!choice.options.some((each) => each.id === option)) lost.push(`${id}: ${choice.id}=${option}`);
      }
    }
    expect(lost).toEqual([]);
  });
});
