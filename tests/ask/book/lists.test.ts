import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fold, setting } from '../../../src/ask/book/book.ts';
import { type Cell, type Change, stampAfter } from '../../../src/ask/book/change.ts';
import { fieldsOf, fieldType, type LineKind, lineKinds } from '../../../src/ask/book/fields.ts';
import { type ListRead, mostRows, readList } from '../../../src/ask/book/list-in.ts';
import { readCell } from '../../../src/ask/book/read-change.ts';
import { bookToCsv, isWholeCsv, readWholeCsv } from '../../../src/ask/book/whole-csv.ts';
import { bookToJson, readWholeJson } from '../../../src/ask/book/whole-json.ts';
import { engine } from '../../../src/ask/engine.ts';
import { units } from '../../../src/calc/units.ts';
import { knowledge } from '../../../src/rules/knowledge.ts';

const read = (text: string): ListRead => {
  const list = readList(text, engine);
  if (typeof list === 'string') throw new Error(list);
  return list;
};
const is = (number: number, unit: string) => ({ number, unit });

describe('a patrol list', () => {
  test('as a supervisor keeps it: odd headings, units in them, marks in cells', () => {
    const { patches, faults, notes } = read(
      [
        "Patch #,Sta.,Side,Length (ft),WIDTH',Depth in.,Distress,Remarks,Crew chief's guess",
        '1,12+50,RT,300,12,2,alligator cracking,"soft, pumps when wet",40 t',
        '2,18+00,LT,"1,250",10\' 6",1 1/2,rutting,,',
        '',
        '3,MP 4.2,both,50 yd,11,2-3,,"the ""big"" one",',
      ].join('\r\n'),
    );
    expect(faults).toEqual([]);
    expect(patches).toEqual([
      {
        label: '1',
        station: '12+50',
        lane: 'RT',
        'patch-length': is(300, 'ft'),
        'patch-width': is(12, 'ft'),
        'patch-depth': is(2, 'in'),
        defect: 'alligator-cracking',
        note: "soft, pumps when wet\nCrew chief's guess: 40 t",
      },
      {
        label: '2',
        station: '18+00',
        lane: 'LT',
        'patch-length': is(1250, 'ft'),
        'patch-width': is(10.5, 'ft'),
        'patch-depth': is(1.5, 'in'),
        defect: 'rutting',
      },
      {
        label: '3',
        station: 'MP 4.2',
        lane: 'both',
        'patch-length': is(50, 'yd'),
        'patch-width': is(11, 'ft'),
        readings: [is(2, 'in'), is(3, 'in')],
        note: 'the "big" one',
      },
    ]);
    expect(notes).toEqual(["Kept in the note of each patch: Crew chief's guess."]);
  });

  test('from a spreadsheet abroad: byte order mark, semicolons, decimal commas, metres', () => {
    const { patches, notes } = read(
      '\uFEFFLocation;Length [m];Width [m];Depth [mm]\n1+200;91,5;3,6;50\n2+000;1.250;3,6;38\n',
    );
    expect(patches).toEqual([
      { station: '1+200', 'patch-length': is(91.5, 'm'), 'patch-width': is(3.6, 'm'), 'patch-depth': is(50, 'mm') },
      { station: '2+000', 'patch-length': is(1250, 'm'), 'patch-width': is(3.6, 'm'), 'patch-depth': is(38, 'mm') },
    ]);
    expect(notes[0]).toMatch(/decimals/);
  });

  test('pasted from a sheet (tabs), sizes in one column, and no units anywhere: what was assumed is said', () => {
    const { patches, notes } = read('spot\tsize\ttack rate\nA\t12 x 300 ft x 2 in\t0.1\nB\t10x60\t\n');
    expect(patches).toMatchObject([
      {
        label: 'A',
        'patch-length': is(300, 'ft'),
        'patch-width': is(12, 'ft'),
        'patch-depth': is(2, 'in'),
        'tack-rate': is(0.1, 'gal/yd2'),
      },
      { label: 'B', 'patch-length': is(60, 'ft'), 'patch-width': is(10, 'ft') },
    ]);
    expect(notes).toEqual(['tack rate has no unit: read as gal/yd2.']);
  });

  test.each([
    ['=SUM(B2:B9)', /holds a formula/],
    ['@cmd', /holds a formula/],
    ['-5', /nothing or less/],
    ['0', /nothing or less/],
    ['long', /is no figure/],
    ['12 tons', /is no patch length/],
    ['900 mi', /cannot be right/],
    ['300 ft 400 ft', /more than one figure/],
  ])('a length that is none keeps its row back, to be mended: %s', (cell, said) => {
    const { patches, faults, rejected } = read(`length ft,width ft,note\n100,10,good\n${cell},12,"bad, row"\n`);
    expect(patches).toHaveLength(1);
    expect(faults).toEqual([{ row: 3, text: expect.stringMatching(said) }]);
    expect(rejected).toBe(`length ft,width ft,note\n${cell},12,"bad, row"`);
  });

  test('a formula where words may stand is kept as the words it is', () => {
    expect(read('length ft,remarks\n100,"=HYPERLINK(""x"")"\n').patches[0]).toMatchObject({ note: '=HYPERLINK("x")' });
  });

  test('days as they are written, and one that is none', () => {
    const { patches, faults, notes } = read(
      'patch,date,length ft\n1,2026-05-04,9\n2,5/4/2026,9\n3,25/4/2026,9\n4,4.5.2026,9\n5,2026-02-30,9',
    );
    expect(patches.map(({ day }) => day)).toEqual(['2026-05-04', '2026-05-04', '2026-04-25', '2026-05-04']);
    expect([faults[0]?.row, notes.at(-1)]).toEqual([6, expect.stringMatching(/month first/)]);
  });

  test.each([
    ['', /nothing in the list/],
    ['x,y,z\n1,2,3', /None of the headings/],
    ['just words', /None of the headings/],
  ])('what is no list is said so: %s', (text, said) => {
    expect(readList(text, engine)).toMatch(said);
  });

  test('a million rows are refused at once, and told how many a job takes', () => {
    const start = performance.now();
    const text = `length,width,depth\n${'100,12,2\n'.repeat(1_000_000)}`;
    expect(readList(text, engine)).toMatch(/Nothing was taken in/);
    const many = `length,width,depth\n${'1,2,3\n'.repeat(400_000)}`;
    expect(readList(many, engine)).toMatch(/more than 2,000 rows.*Nothing was taken in/);
    expect(performance.now() - start).toBeLessThan(3000);
    expect(read(`length,width,depth\n${'100,12,2\n'.repeat(mostRows)}`).patches).toHaveLength(mostRows);
  });

  test('a quotation mark without its partner is told, whatever else stands there', () => {
    const { faults } = read('length ft,note\n100,"never closed\n200,x\n');
    expect(faults[0]?.text).toMatch(/no partner/);
  });

  test('nothing a person could paste makes it throw, or gives a figure that is not finite', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'len,wid;dep\t\n"12.5½\'=-x/ 0'), maxLength: 200 }), (text) => {
        const list = readList(`length,${text}`, engine);
        if (typeof list !== 'string') expect(JSON.stringify(list)).not.toMatch(/null|Infinity|NaN/);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a whole book, out and in again', () => {
  const text = fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 20 })
    .filter((s) => s.trim() !== '' && !s.includes('\0'));
  const nasty = fc.constantFrom('=1+1', "'quoted", '+49', '-x', '@x', 'a "b" c', 'two\nlines', '½" – ok;,', '\ttab');
  const figureOf = (dimension: string) =>
    fc.record({
      number: fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }).map((x) => x + 0),
      unit: fc.constantFrom(
        ...Object.entries(units)
          .filter(([, row]) => row.dimension === dimension)
          .map(([unit]) => unit),
      ),
    });

  function cell(kind: LineKind, field: string): fc.Arbitrary<Cell> {
    const type = fieldType(kind, field, knowledge)!;
    const all: Record<string, () => fc.Arbitrary<unknown>> = {
      text: () => fc.oneof(text, nasty),
      initials: () => fc.constantFrom('AB', 'é', 'WXYZ'),
      date: () => fc.constantFrom('2026-05-04', '2024-02-29'),
      clock: () => fc.constantFrom('07:30', '23:59'),
      yes: () => fc.boolean(),
      line: () => fc.constantFrom('patch/a', 'patch/b-1'),
      choice: () => fc.constantFrom(...(type.type === 'choice' ? type.options : [])),
      figure: () => figureOf(type.type === 'figure' ? type.dimension : ''),
      figures: () => fc.array(figureOf('length'), { minLength: 1, maxLength: 4 }),
      rules: () => fc.constant({ rules: { name: 'Alder "County"', defaults: { waste: { number: 8, unit: '%' } } } }),
    };
    return all[type.type]!().filter((value) => readCell(value, type) !== undefined) as fc.Arbitrary<Cell>;
  }

  const lines = fc.array(
    fc.constantFrom(...lineKinds).chain((kind) =>
      fc.record({
        line: kind === 'job' ? fc.constant('job') : fc.nat(9).map((n) => `${kind}/l${n}`),
        set: fc
          .subarray(
            [
              ...fieldsOf(kind),
              ...(kind === 'patch' || kind === 'job' ? ['patch-length', 'mix-kind', 'material-price'] : []),
            ],
            { minLength: 1 },
          )
          .chain((fields) => fc.record(Object.fromEntries(fields.map((field) => [field, cell(kind, field)])))),
      }),
    ),
    { maxLength: 12 },
  );

  const bookOf = (all: readonly { line: string; set: Record<string, Cell> }[]) => {
    const changes: Change[] = [];
    for (const { line, set } of all) {
      const book = fold(changes);
      changes.push(setting(book, line, set, { stamp: stampAfter(book.last, 1, 'phone1'), by: 'AB' }));
    }
    return { changes, book: fold(changes) };
  };
  const contents = ({ lines: all }: ReturnType<typeof fold>) =>
    [...all].map(([id, { fields }]) => [id, [...fields].map(([name, { value }]) => [name, value])]);

  test('CSV loses nothing', () => {
    fc.assert(
      fc.property(lines, (all) => {
        const { book } = bookOf(all);
        const csv = bookToCsv(book, knowledge);
        expect(isWholeCsv(csv)).toBe(true);
        const back = readWholeCsv(csv, knowledge);
        if (typeof back === 'string') throw new Error(back);
        expect(contents(bookOf(back).book)).toEqual(contents(book));
      }),
      { numRuns: 500 },
    );
  });

  test('no cell of it is one that a spreadsheet works out', () => {
    const { book } = bookOf([{ line: 'patch/a', set: { note: '=2+2', label: '@x' } }]);
    expect(bookToCsv(book, knowledge).split('\r\n')[1]).toBe("patch/a,'=2+2,'@x");
  });

  test('JSON keeps every change, and joined with what it came from changes nothing', () => {
    fc.assert(
      fc.property(lines, (all) => {
        const { changes } = bookOf(all);
        expect(readWholeJson(bookToJson(changes), knowledge)).toEqual(changes);
      }),
      { numRuns: 200 },
    );
  });

  test.each([
    ['{', /no saved job book/],
    ['{"jobBook":2,"changes":[]}', /newer version/],
    ['{"jobBook":1,"changes":[{}]}', /must say when/],
    ['{"jobBook":1,"changes":[{"id":"000000001.0000.phone1","line":"rocket/1","set":{"note":"x"}}]}', /newer version/],
    [
      '{"jobBook":1,"changes":[{"id":"000000001.0000.phone1","line":"patch/1","set":{"patch-length":{"number":1,"unit":"ton"}}}]}',
      /does not fit/,
    ],
  ])('a saved book that cannot be taken is said so: %s', (saved, said) => {
    expect(readWholeJson(saved, knowledge)).toMatch(said);
  });
});
