import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readFrontMatter } from '../../scripts/front-matter.mjs';
import { cards } from '../../src/ask/cards.generated.ts';
import { toBase } from '../../src/calc/quantity.ts';
import { read } from '../../src/calc/read/read.ts';
import { type Unit, unitRow } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { isQuantity } from '../../src/rules/shapes.ts';

interface Standing {
  readonly record: string;
  readonly dimension: string;
  readonly base: number;
}

/** Every figure that a record holds: defaults of quantities with their ends, and bounds of limits. */
const standing: readonly Standing[] = [
  ...[...knowledge.quantities.values()].flatMap(({ id, default: figure }) => {
    if (!figure) return [];
    const { number, low = number, high = number, unit } = figure;
    return [number, low, high].map((each) => at(`quantity/${id}`, each, unit));
  }),
  ...[...knowledge.limits.values()].flatMap(({ id, max, min, stopFrom, stopOver }) =>
    [max, min, stopFrom, stopOver].flatMap((bound) =>
      bound && !isQuantity(bound) ? [at(`limit/${id}`, bound.number, bound.unit)] : [],
    ),
  ),
];

function at(record: string, number: number, unit: Unit): Standing {
  return { record, dimension: unitRow(unit).dimension, base: toBase(number, unit) };
}

/** Figures of a text that are one of a record's, with the record. */
function typedAgain(text: string): string[] {
  return read(text).flatMap((item) => {
    if (item.kind !== 'figure' || !item.unit) return [];
    const { unit, number, low = number, high = number } = item;
    const { dimension } = unitRow(unit);
    if (dimension === 'count') return [];
    const bases = [number, low, high].map((each) => toBase(each, unit));
    const same = standing.find(
      (each) => each.dimension === dimension && bases.some((base) => Math.abs(base - each.base) <= 1e-6 * each.base),
    );
    return same ? [`${text.slice(...item.at)} is ${same.record}`] : [];
  });
}

/** Figures that only look like a record's, named in the front matter of their card. */
function ownOf(id: string): readonly string[] {
  const text = readFileSync(join(import.meta.dirname, `../../content/${id}.md`), 'utf8');
  const { own = [] } = readFrontMatter(text, (what) => new Error(what)).fields;
  return [own].flat();
}

describe('a figure that a record holds is not typed again', () => {
  test.each(cards.map((card) => [card.id, card] as const))('%s', (id, { title, text, asks, emergency }) => {
    const own = ownOf(id);
    const whole = [title, text, ...asks, emergency?.first ?? ''].join('\n');
    for (const figure of own) expect(whole, 'a figure of its own that it does not have').toContain(figure);
    const without = own.reduce((rest, figure) => rest.replaceAll(figure, ' '), whole);
    expect(typedAgain(without)).toEqual([]);
    for (const figure of own)
      expect(typedAgain(figure), `${figure} is no record's: it need not be named`).not.toEqual([]);
  });

  test('such a figure is seen, however it is written', () => {
    expect(typedAgain('lay at most one inch')).toHaveLength(1);
    expect(typedAgain('lay at most 25.4 mm')).toHaveLength(1);
    expect(typedAgain('about 110 lb/yd2/in')).toHaveLength(1);
    expect(typedAgain('lay at most {lift-max}')).toEqual([]);
  });
});
