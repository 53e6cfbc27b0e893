import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Book, fold, merge, removing, setting, undoing } from '../../../src/ask/book/book.ts';
import { type Cell, type Change, stampAfter } from '../../../src/ask/book/change.ts';

/** What two phones do: each edits fields of a few lines, takes one off, and now and then hears from the other. */
type Step =
  | {
      readonly phone: 0 | 1;
      readonly does: 'set';
      readonly line: string;
      readonly field: string;
      readonly value: number;
    }
  | { readonly phone: 0 | 1; readonly does: 'remove'; readonly line: string }
  | { readonly phone: 0 | 1; readonly does: 'undo' }
  | { readonly phone: 0 | 1; readonly does: 'hear' };

const phone = fc.constantFrom(0 as const, 1 as const);
const line = fc.constantFrom('patch/a', 'patch/b');
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      phone,
      does: fc.constant('set' as const),
      line,
      field: fc.constantFrom('note', 'lane'),
      value: fc.nat(3),
    }),
  },
  { weight: 1, arbitrary: fc.record({ phone, does: fc.constant('remove' as const), line }) },
  { weight: 1, arbitrary: fc.record({ phone, does: fc.constant('undo' as const) }) },
  { weight: 2, arbitrary: fc.record({ phone, does: fc.constant('hear' as const) }) },
);

/** Plays the steps. The clocks of the two phones are far apart, and one of them goes backward. */
function play(steps: readonly Step[]): readonly [Change[], Change[]] {
  const phones: [Change[], Change[]] = [[], []];
  steps.forEach((each, at) => {
    const own = phones[each.phone];
    const other = phones[each.phone === 0 ? 1 : 0];
    const wall = each.phone === 0 ? 1_700_000_000_000 - at * 1000 : 1_600_000_000_000 + at;
    const book = fold(own);
    const maker = { stamp: stampAfter(book.last, wall, `phone${each.phone}`), by: each.phone === 0 ? 'AB' : 'CD' };
    if (each.does === 'hear') phones[each.phone] = merge(own, other);
    if (each.does === 'set') own.push(setting(book, each.line, { [each.field]: `v${each.value}` }, maker));
    if (each.does === 'remove' && book.lines.has(each.line)) own.push(removing(book, each.line, maker));
    const last = own.findLast(({ id }) => id.endsWith(`phone${each.phone}`));
    const undo = each.does === 'undo' && last ? undoing(own, last.id, maker) : undefined;
    if (undo) own.push(undo);
  });
  return phones;
}

const shown = (book: Book): unknown =>
  JSON.parse(
    JSON.stringify([[...book.lines].map(([id, { fields, gone }]) => [id, gone, [...fields]]), book.clashes, book.last]),
  );

/** Every value that somebody set and nobody has seen and replaced; worked out from the changes alone, another way round than the book does. */
function unseen(changes: readonly Change[], line: string, field: string): Set<string> {
  const writers = changes.filter((change) => change.line === line && field in change.set);
  const seen = new Set(writers.flatMap(({ over }) => over?.[field] ?? []));
  return new Set(writers.filter(({ id }) => !seen.has(id)).map(({ set }) => JSON.stringify(set[field])));
}

describe('two phones, ten thousand ways of editing one job', () => {
  test('end the same in every order, with every clash shown to both and no value lost that nobody replaced', () => {
    let clashes = 0;
    fc.assert(
      fc.property(fc.array(step, { maxLength: 24 }), fc.infiniteStream(fc.nat()), (steps, dice) => {
        const [a, b] = play(steps);
        const ab = merge(a, b);
        const once = shown(fold(ab));
        expect(shown(fold(merge(b, a)))).toEqual(once);
        const shuffled = [...ab, ...a].map((change) => [dice.next().value!, change] as const).sort(([x], [y]) => x - y);
        expect(shown(fold(shuffled.map(([, change]) => change)))).toEqual(once);
        const { lines, clashes: told } = fold(ab);
        clashes += told.length;
        for (const { id, fields } of lines.values())
          for (const [field, held] of fields) {
            const kept = new Set([held, ...held.others].map(({ value }) => JSON.stringify(value)));
            expect(kept).toEqual(unseen(ab, id, field));
            expect(told.some((clash) => clash.line === id && clash.field === field) || held.others.length === 0).toBe(
              true,
            );
          }
      }),
      { numRuns: 10_000 },
    );
    expect(clashes).toBeGreaterThan(1000);
  }, 120_000);

  test('merging is commutative, associative and idempotent', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), fc.array(step, { maxLength: 10 }), (one, two) => {
        const [a, b] = play(one);
        const [c] = play(two);
        expect(merge(a, b)).toEqual(merge(b, a));
        expect(merge(merge(a, b), c)).toEqual(merge(a, merge(b, c)));
        expect(merge(merge(a, b), b)).toEqual(merge(a, b));
      }),
      { numRuns: 2000 },
    );
  });
});

describe('a book', () => {
  const at = (n: number, device = 'phonea'): string => stampAfter(undefined, n, device);
  const note = (book: Book, text: Cell | null, stamp: string, by?: string): Change =>
    setting(book, 'patch/a', { note: text }, { stamp, by });
  const empty = fold([]);

  test('an edit made after seeing another takes its place, though its clock is behind', () => {
    const first = note(empty, 'one', at(5000));
    const book = fold([first]);
    const second = note(book, 'two', stampAfter(book.last, 10, 'phoneb'));
    const { lines, clashes } = fold([second, first]);
    expect(lines.get('patch/a')!.fields.get('note')).toMatchObject({ value: 'two', others: [] });
    expect(clashes).toEqual([]);
  });

  test('edits that have not seen each other are both kept, with who made them, until somebody settles it', () => {
    const start = note(empty, 'start', at(1));
    const seen = fold([start]);
    const [ab, cd] = [note(seen, 'left lane', at(3, 'phonea'), 'AB'), note(seen, 'right lane', at(4, 'phoneb'), 'CD')];
    const both = fold([start, ab, cd]);
    expect(both.clashes).toEqual([
      {
        line: 'patch/a',
        field: 'note',
        stands: expect.objectContaining({ value: 'right lane', by: 'CD' }),
        others: [{ value: 'left lane', change: ab.id, by: 'AB' }],
      },
    ]);
    const settled = note(both, 'left lane', at(9), 'AB');
    expect(fold([start, ab, cd, settled]).clashes).toEqual([]);
  });

  test('the same thing set twice is no clash, and the next edit replaces both', () => {
    const [a, b] = [note(empty, 'same', at(1, 'phonea')), note(empty, 'same', at(2, 'phoneb'))];
    const both = fold([a, b]);
    expect(both.clashes).toEqual([]);
    expect(fold([a, b, note(both, 'other', at(3))]).clashes).toEqual([]);
  });

  test('a line taken off stays on when somebody wrote in it meanwhile, and both are told', () => {
    const start = note(empty, 'start', at(1));
    const seen = fold([start]);
    const off = removing(seen, 'patch/a', { stamp: at(5, 'phonea'), by: 'AB' });
    expect(fold([start, off]).lines.get('patch/a')!.gone).toBe(true);
    const edit = note(seen, 'longer than thought', at(4, 'phoneb'), 'CD');
    const { lines, clashes } = fold([start, off, edit]);
    expect(lines.get('patch/a')!.gone).toBe(false);
    expect(clashes).toMatchObject([
      { field: 'gone', stands: { by: 'AB' }, others: [{ value: 'longer than thought', by: 'CD' }] },
    ]);
  });

  test('undo puts back what was there, and leaves alone what somebody has written since', () => {
    const one = note(empty, 'one', at(1));
    const two = note(fold([one]), 'two', at(2));
    const back = undoing([one, two], two.id, { stamp: at(3) })!;
    expect(fold([one, two, back]).lines.get('patch/a')!.fields.get('note')!.value).toBe('one');
    const three = note(fold([one, two]), 'three', at(3, 'phoneb'));
    expect(undoing([one, two, three], two.id, { stamp: at(4) })).toBeUndefined();
    expect(undoing([one], 'none', { stamp: at(4) })).toBeUndefined();
    const off = removing(fold([one]), 'patch/a', { stamp: at(5) });
    const on = undoing([one, off], off.id, { stamp: at(6) })!;
    expect(fold([one, off, on]).lines.get('patch/a')!.gone).toBe(false);
  });

  test('a stamp comes after all that was seen, whatever the clock says, and goes with the clock when it can', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -10, max: 2 ** 45 }), { minLength: 1 }), (walls) => {
        let last: string | undefined;
        for (const wall of walls) {
          const next = stampAfter(last, wall, 'phonea');
          expect(last === undefined || next > last).toBe(true);
          last = next;
        }
      }),
    );
    expect(stampAfter(stampAfter(undefined, 5, 'phonea'), 4, 'phoneb') > stampAfter(undefined, 5, 'phonez')).toBe(true);
  });
});
