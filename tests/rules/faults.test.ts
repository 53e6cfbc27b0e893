import { describe, expect, test } from 'vitest';
import { knowledge } from '../../src/rules/knowledge.ts';
import { work } from '../../src/rules/work.ts';

/** Ids that callers rely on. */
const ids =
  'washboards scallops ridge tearing segregation drag-marks chunks spill-under-wheels pile-at-end thin-edge end-bump center-hump wheel-ridges pickup pushing slippage bleeding raveling ponding soft-spot runs-short low-patch tack-tracking roller-cracks roller-marks joint-open cold-load failure-returns rained-on-tack bar-streak'.split(
    ' ',
  );
const records = [...work.faults.values()].map((record) => [record.id, record] as const);

test('every fault has its record', () => {
  expect([...work.faults.keys()].sort()).toEqual([...ids].sort());
});

describe('fault records', () => {
  test.each(records)('%s rests on rules that there are', (_, { causes }) => {
    const named = causes.flatMap(({ rule }) => rule ?? []);
    expect(named.filter((rule) => !knowledge.limits.has(rule) && !knowledge.practices.has(rule))).toEqual([]);
  });

  test.each(records)('%s: its question leads to what there is', (_, { apart, causes }) => {
    const options = apart?.by.options.map(({ id }) => id) ?? [];
    for (const [option, to] of Object.entries(apart?.leads ?? {})) {
      expect(options).toContain(option);
      expect('fault' in to ? work.faults.has(to.fault) : work.defects.has(to.defect)).toBe(true);
    }
    if (apart) expect(apart.by.question).toBeDefined();
    for (const { when } of causes)
      if (when) expect(when.choice.options.map(({ id }) => id)).toEqual(expect.arrayContaining([...when.is]));
  });

  test.each(records)(
    '%s: a figure in its words has a source that is more than practice',
    (_, { causes, now, nextTime, sources }) => {
      for (const { text, remedy, source } of causes)
        if (/\d/.test(`${text} ${remedy}`)) expect(source.seen).not.toBe('practice');
      if (/\d/.test(`${now} ${nextTime}`)) expect(sources.some(({ seen }) => seen !== 'practice')).toBe(true);
    },
  );

  test.each(records)('%s: what its causes rest on is among its sources', (_, { causes, sources }) => {
    const documents = new Set(sources.map(({ document }) => document));
    expect(
      causes.filter(({ source }) => source.seen === 'read' && !documents.has(source.document)).map(({ text }) => text),
    ).toEqual([]);
  });

  test.each(records)('%s: examples do not say its name', (id, { examples }) => {
    const name = new RegExp(`\\b${id.replace(/s$/, '').replaceAll('-', '[ -]')}`, 'i');
    expect(examples.finds.filter((question) => !name.test(question)).length).toBeGreaterThanOrEqual(2);
  });
});
