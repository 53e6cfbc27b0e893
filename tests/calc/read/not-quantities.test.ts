import { describe, expect, it } from 'vitest';
import { corpus, telling } from './reads.ts';

const lines = corpus('not-quantities.txt').filter((line) => !line.startsWith('# '));

describe('texts that hold no figure', () => {
  it('are at least 150', () => {
    expect(new Set(lines).size).toBe(lines.length);
    expect(lines.length).toBeGreaterThanOrEqual(150);
  });

  it.each(lines.map((line) => line.split('\t') as [string, string?]))('%s', (text, sort) => {
    const names = telling(text).map((item) => (item.kind === 'name' ? item.sort : item));
    expect(names).toEqual(sort === undefined ? [] : [sort]);
  });
});
