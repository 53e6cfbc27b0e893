import fc from 'fast-check';
import { fieldsOf, lineKinds } from '../../src/ask/book/fields.ts';
import { hostile, odd } from './typed.ts';

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
