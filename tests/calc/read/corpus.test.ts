import { describe, expect, it } from 'vitest';
import type { Figure, Name } from '../../../src/calc/read/reading.ts';
import { type CorpusLine, corpusLines, telling, type Want } from './reads.ts';

/**
 * The corpus: what a person who knows the trade reads in each text, written down before there was a reader and worked out
 * apart from it. Rows the reader rightly reads otherwise, since the rest is for binding to say, stand with their reason
 * in read-otherwise.jsonl.
 */
const rows = corpusLines('readings.jsonl');
const otherwise = new Map(corpusLines('read-otherwise.jsonl').map((line) => [line.id, line]));

describe('the corpus of readings', () => {
  it('holds rows 1 to 388, each once', () => {
    expect(rows.map((row) => row.id)).toEqual(Array.from({ length: 388 }, (_, i) => i + 1));
  });

  it.each(rows.filter((row) => !otherwise.has(row.id)).map((row) => [row.id, row.text, row] as const))(
    '%i %s',
    (_id, text, row) => {
      expect(mismatch(telling(text), row)).toBeUndefined();
    },
  );

  it.each([...otherwise.values()].map((row) => [row.id, row.why, row] as const))('%i otherwise: %s', (id, why, row) => {
    const { text, want } = rows.find((one) => one.id === id)!;
    expect(why!.length).toBeGreaterThan(20);
    expect(mismatch(telling(text), row), text).toBeUndefined();
    expect(
      mismatch(telling(text), { ...row, want }),
      `${text} is read as the corpus says: take it off the list`,
    ).toBeDefined();
  });
});

/** What differs between a reading and a row, or undefined. */
function mismatch(items: readonly (Figure | Name)[], row: Pick<CorpusLine, 'want'>): string | undefined {
  if (items.length !== row.want.length)
    return `${items.length} items, ${row.want.length} wanted: ${JSON.stringify(items)}`;
  const wrong = row.want.findIndex((want, k) => !matches(items[k]!, want));
  return wrong < 0 ? undefined : `${JSON.stringify(items[wrong])} is not ${JSON.stringify(row.want[wrong])}`;
}

function matches(item: Figure | Name, want: Want): boolean {
  if (item.kind === 'name') return want.name === item.sort;
  if (want.name !== undefined) return false;
  if (want.parts) return item.form === 'ratio' && item.number === want.parts[0] / want.parts[1];
  const range = want.low !== undefined;
  if (
    range
      ? !(near(item.low, want.low) && near(item.high, want.high))
      : item.low !== undefined || !near(item.number, want.number)
  )
    return false;
  if (
    want.unclear !== undefined &&
    (want.unclear === true ? item.unclear === undefined : item.unclear !== want.unclear)
  )
    return false;
  if (want.unclear !== true && item.unit !== want.unit) return false;
  return item.bound === want.bound && item.about === want.about && item.trend === want.trend;
}

/** Equal to the last place the corpus prints. */
function near(number: number | undefined, want: number | undefined): boolean {
  if (number === undefined || want === undefined) return false;
  const places = String(want).split('.')[1]?.length ?? 0;
  return Math.abs(number - want) <= (places === 0 ? 1e-9 : 0.5 * 10 ** -places);
}
