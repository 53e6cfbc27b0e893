import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { fieldsOf, lineKinds } from '../../src/ask/book/fields.ts';
import { units } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';

const here = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const linesOf = (path: string): string[] => here(path).split('\n').filter(Boolean);

/** What people ask, and what they are not taken to ask. */
export const questions: readonly string[] = [
  ...linesOf('tests/corpus/questions.txt'),
  ...linesOf('tests/corpus/questions.jsonl').map(
    (line) => (JSON.parse(line) as { question?: string }).question ?? line,
  ),
  ...linesOf('tests/corpus/not-quantities.txt'),
];
export const hostile: readonly string[] = linesOf('tests/corpus/hostile.jsonl').map(
  (line) => JSON.parse(line) as string,
);

/** Pieces that make trouble for a reader: signs near figures, odd letters, names every object has, and figures past all bounds. */
const odd = [
  ...[
    '½',
    '1⁄2',
    '′',
    '”',
    '×',
    '−',
    '\u00a0',
    '\u202e',
    '🚧',
    '\n',
    '\r\n',
    '\t',
    '\0',
    '\ud800',
    'ﬁ',
    'İ',
    'ß',
    '１２',
    '٣',
  ],
  ...[
    '12',
    '0',
    '-',
    '.',
    ',',
    '1e9',
    '1e308',
    '1e-308',
    '-0',
    '999999999999',
    '00012',
    '0x10',
    '1_000',
    '1/0',
    '0/0',
    '3-',
    "5'6",
  ],
  ...[
    '"',
    "'",
    '%',
    '#',
    '@',
    '$',
    '&',
    '/',
    '\\',
    '(',
    ')',
    '[',
    ']',
    '{',
    '}',
    '<',
    '>',
    '|',
    ';',
    ':',
    '=',
    '+',
    '*',
    '~',
    '^',
    '`',
    '?',
  ],
  ...[
    'ton',
    'tons',
    'in',
    'ft',
    ' x ',
    '1:1',
    'per',
    'sq yd',
    'gal',
    'mph',
    'mm',
    'deg F',
    '%',
    'ñ',
    'why ',
    'same but ',
    'is ',
    'NaN',
  ],
  ...[
    'Infinity',
    'null',
    'undefined',
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    ' and ',
    ' or ',
    ' not ',
    'patch 3',
    'half',
    'dozen',
  ],
];

/** A text with a few places of it replaced by trouble, pieces of it said twice, or two texts grown together. */
const edited = (texts: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...texts),
      fc.constantFrom(...texts),
      fc.nat({ max: 3 }),
      fc.array(fc.tuple(fc.nat({ max: 200 }), fc.nat({ max: 4 }), fc.constantFrom(...odd)), { maxLength: 6 }),
    )
    .map(([text, other, how, edits]) => {
      const start =
        how === 0
          ? text.slice(0, text.length / 2) + other.slice(other.length / 2)
          : how === 1
            ? `${text} ${other}`
            : text;
      return edits.reduce((now, [at, drop, put]) => {
        const place = now.length === 0 ? 0 : at % (now.length + 1);
        return now.slice(0, place) + put + now.slice(place + drop);
      }, start);
    });

const words = [...new Set(questions.join(' ').split(' '))];
const soup = fc
  .array(fc.oneof(fc.constantFrom(...words), fc.constantFrom(...odd), fc.nat({ max: 1e6 }).map(String)), {
    maxLength: 30,
  })
  .map((list) => list.join(' '));
const repeated = fc
  .tuple(fc.constantFrom(...odd, ...words.slice(0, 200)), fc.integer({ min: 2, max: 400 }))
  .map(([piece, times]) => piece.repeat(times).slice(0, 2000));

/** What may be typed: mostly near to what people type, seldom plain noise. */
export const typed: fc.Arbitrary<string> = fc.oneof(
  { weight: 8, arbitrary: edited(questions) },
  { weight: 3, arbitrary: soup },
  { weight: 1, arbitrary: repeated },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
  { weight: 1, arbitrary: fc.constantFrom(...hostile) },
);

/** Values that stand where none of them belongs. */
const values: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    false,
    '',
    ' ',
    0,
    -0,
    -1,
    1e308,
    -1e308,
    5e-324,
    2 ** 53,
    [],
    {},
    [[]],
    [null],
    '1',
    'in',
    '__proto__',
  ),
  fc.constantFrom<unknown>(
    { number: 1, unit: 'in' },
    { number: -1, unit: 'degF' },
    { number: 1e308, unit: 'mi' },
    { number: 0, unit: 'ton' },
    { min: { number: 1, unit: 'in' } },
  ),
  fc.constantFrom(...hostile),
  fc.constantFrom(...knowledge.quantities.keys()),
  fc.constantFrom(...Object.keys(units)),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.jsonValue({ maxDepth: 3 }),
);
const keys = fc.oneof(
  fc.constantFrom(
    '__proto__',
    'constructor',
    'toString',
    '',
    'number',
    'unit',
    'min',
    'max',
    'note',
    'limits',
    'defaults',
    'over',
    'set',
  ),
  fc.constantFrom(...knowledge.quantities.keys()),
  fc.constantFrom(...knowledge.limits.keys()),
);

interface Edit {
  readonly at: number;
  readonly how: number;
  readonly key: string;
  readonly value: unknown;
}

/** A copy of a value with a few of its parts replaced, left out, said under another name, or put into a list. */
export function bent(base: unknown): fc.Arbitrary<unknown> {
  const edit: fc.Arbitrary<Edit> = fc.record({
    at: fc.nat({ max: 10_000 }),
    how: fc.nat({ max: 4 }),
    key: keys,
    value: values,
  });
  return fc.array(edit, { maxLength: 4 }).map((edits) => {
    let root = structuredClone(base);
    for (const { at, how, key, value } of edits) {
      const places = placesIn(root);
      const place = places[at % Math.max(1, places.length)];
      if (!place) root = value;
      else change(place.holder as Record<string, unknown>, place.key, how, key, value);
    }
    // As it comes over the wire, where a list has no holes.
    return JSON.parse(JSON.stringify(root) ?? 'null') as unknown;
  });
}

function change(holder: Record<string, unknown>, key: string, how: number, name: string, value: unknown): void {
  const had = holder[key];
  const put = (under: string, what: unknown): void => {
    Object.defineProperty(holder, under, {
      value: structuredClone(what),
      enumerable: true,
      configurable: true,
      writable: true,
    });
  };
  if (how === 0) delete holder[key];
  else if (how === 1) put(key, [had, had]);
  else if (how === 2) put(name, had);
  else put(key, value);
}

function placesIn(value: unknown): { holder: object; key: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((key) => [
    { holder: value, key },
    ...placesIn((value as Record<string, unknown>)[key]),
  ]);
}

export const agencyFiles: readonly unknown[] = ['alder-county', 'california-signs'].map((name) =>
  JSON.parse(here(`docs/examples/${name}.json`)),
);
const schedule = JSON.parse(here('docs/examples/fema-rates-2025.json')) as { rates: unknown[] };
export const ratesFile: unknown = { ...schedule, rates: schedule.rates.slice(0, 8) };

const stamp = (n: number): string => `0mabcdefg.${n.toString(36).padStart(4, '0')}.phone1`;
const figure = (number: number, unit: string) => ({ number, unit });
/** A job with a line of every kind. */
export const changes: readonly unknown[] = [
  {
    name: 'Mill Road',
    road: 'CR 12',
    direction: 'up',
    'day-tons': figure(80, 'ton'),
    note: '=1+1',
    'material-price': figure(85, 'USD/ton'),
  },
  {
    label: '1',
    station: '12+50',
    'patch-length': figure(300, 'ft'),
    'patch-width': figure(12, 'ft'),
    'patch-depth': figure(2, 'in'),
    day: '2026-05-04',
  },
  {
    label: '2',
    readings: [figure(1, 'in'), figure(2, 'in')],
    'patch-length': figure(20, 'm'),
    'patch-width': figure(3, 'm'),
    done: true,
  },
  {
    day: '2026-05-04',
    time: '09:30',
    patch: 'patch/a1',
    ticket: '17',
    'placed-mass': figure(14.2, 'ton'),
    'mix-temperature': figure(280, 'degF'),
  },
  { day: '2026-05-04', who: 'JM', task: 'rake', 'work-hours': figure(8, 'h'), 'labor-rate': figure(30, 'USD/h') },
  { day: '2026-05-04', patch: 'patch/a1', 'tack-used': figure(40, 'gal') },
  { day: '2026-05-04', 'air-temperature': figure(60, 'degF'), sky: 'clear' },
  { day: '2026-05-04', what: 'delay', 'wait-time': figure(20, 'min'), note: "'quoted" },
].map((set, at) => ({
  id: stamp(at + 1),
  by: 'JM',
  line: at === 0 ? 'job' : `${['patch', 'patch', 'load', 'hours', 'tack', 'weather', 'event'][at - 1]}/a${at}`,
  set,
}));

const cell = fc.oneof(
  fc.constantFrom(
    '',
    '1',
    '12',
    '2 1/2',
    '1,5',
    '1.250,5',
    '300 ft',
    '10\' 6"',
    '2-3',
    '1, 2, 3 in',
    '-',
    'n/a',
    '=1+1',
    '+A1',
    '@x',
    "'=x",
    'yes',
    '5/4/2026',
  ),
  fc.constantFrom(
    'alligator cracking',
    'RT',
    '12+50',
    'MP 4.2',
    '12 x 300 x 2',
    '"a ""b"" c"',
    '"a,\nb"',
    '"open',
    '\ufeff',
    '1e308 ft',
    '½ in',
  ),
  fc.constantFrom(...odd),
  fc.constantFrom(...hostile.map((text) => `"${text.replaceAll('"', '""')}"`)),
);
const heading = fc.oneof(
  fc.constantFrom(
    'Patch #',
    'Sta.',
    'Side',
    'Length (ft)',
    "WIDTH'",
    'Depth in.',
    'depth mm',
    'Distress',
    'Remarks',
    'size',
    'date',
    'done',
    'readings',
  ),
  fc.constantFrom(...lineKinds.flatMap((kind) => fieldsOf(kind))),
  fc.constantFrom(...odd),
);
/** A pasted list: headings and rows, parted by one sign or by several. */
export const lists: fc.Arbitrary<string> = fc
  .tuple(
    fc.array(heading, { minLength: 1, maxLength: 7 }),
    fc.array(fc.array(cell, { maxLength: 8 }), { maxLength: 8 }),
    fc.constantFrom(',', '\t', ';', '|'),
    fc.constantFrom('\n', '\r\n', '\r', '\n\n'),
  )
  .map(([head, rows, sign, end]) => [head, ...rows].map((row) => row.join(sign)).join(end));

const reading = fc.oneof(
  fc.constantFrom('1', '2', '1 1/2', '1.5', '1,5', '25 mm', '0', '-1', '-', 'x', '½', '3"', '1e9', '', 'dry'),
  fc.constantFrom(...odd),
);
const station = fc.constantFrom(
  '0+00',
  '0+25',
  '12+50',
  '10',
  '20 ft',
  '30 m',
  'sta 5',
  'MP 2',
  '9+99+9',
  '-5',
  '1e9',
  'a',
);
const rows = fc
  .tuple(
    fc.constantFrom(
      '',
      'station,depth\n',
      'sta\tL\tC\tR\n',
      'Station; Depth (mm); Note\n',
      'depth readings:\n',
      'every 10 ft: ',
    ),
    fc.array(fc.tuple(station, fc.array(reading, { maxLength: 5 })), { maxLength: 12 }),
    fc.constantFrom(',', '\t', ' ', ';', ' - ', ': '),
    fc.constantFrom('', ' across 12 ft', ' 12 ft wide, how many tons', '\nwidth 3.6 m', ' simpson'),
  )
  .map(([head, body, sign, tail]) => head + body.map(([at, of]) => [at, ...of].join(sign)).join('\n') + tail);
const runs = fc
  .tuple(
    fc.constantFrom(
      'readings every 10 ft: ',
      'depths 1 m apart ',
      'lecturas cada 5 m ',
      'shots at 25 ft ',
      'sta 0 to 100: ',
    ),
    fc.array(reading, { maxLength: 20 }),
    fc.constantFrom(' ', ', ', ' / '),
    fc.constantFrom('', ' in across 12 ft', ' mm', ' how many tons', ' lane 12'),
  )
  .map(([head, body, sign, tail]) => head + body.join(sign) + tail);
/** Depth readings as they are pasted or told. */
export const surveys: fc.Arbitrary<string> = fc.oneof(rows, runs).map((text) => text.slice(0, 2000));
