import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

const figure = (number: unknown, unit: unknown) => ({ number, unit });
const file = (parts: object) => ({ name: 'Alder County', source: 'Directive 7', ...parts });
const defaults = (parts: object) => file({ defaults: parts });
const limits = (parts: object) => file({ limits: parts });
const rows = (...parts: object[]) => file({ tables: { 'sign-spacing': parts } });
const row = { 'road-type': 'urban-high', a: 400, b: 400, c: 400, unit: 'ft' };
const upTo = (number: number) => ({ ...row, 'posted-speed': { max: figure(number, 'mph') } });

const oneLine = (key: string) => `${key} must be one line of text, 200 characters at most`;
const asFigure = (unit: string) => `a figure stands with its unit, as { "number": 1, "unit": "${unit}" }`;
const workedOut = 'is worked out by a rule, so a default for it would never be used: give a limit or rows of a table';
const rising = 'rows for urban-high must rise, all by the same figure; only the last may be without a max';
const at = 'tables.sign-spacing';

/** What is wrong, the file, the place that is named, and the sentence. */
const broken: readonly (readonly [what: string, file: unknown, place: string, sentence: string])[] = [
  ['not a file', 'lift-max 1.5', '', 'the file must be an object, in braces'],
  ['nothing but false', false, '', 'the file must be an object, in braces'],
  ['a misspelt part', file({ defualts: {} }), 'defualts', 'there is no defualts here (did you mean defaults?)'],
  ['no name', { source: 'Directive 7' }, 'name', oneLine('name')],
  ['a name of two lines', file({ name: 'Alder\nCounty' }), 'name', oneLine('name')],
  ['an empty source', file({ source: ' ' }), 'source', oneLine('source')],
  ['a date that is a number', file({ date: 2026 }), 'date', oneLine('date')],
  [
    'a misspelt default',
    defaults({ 'unit-wieght': figure(112, 'lb/yd2/in') }),
    'defaults.unit-wieght',
    'there is no unit-wieght here (did you mean unit-weight?)',
  ],
  ['a figure without its unit', defaults({ 'unit-weight': 112 }), 'defaults.unit-weight', asFigure('lb/yd2/in')],
  ['no unit', defaults({ 'truck-payload': { number: 12 } }), 'defaults.truck-payload.unit', asFigure('ton')],
  [
    'a number in quotes',
    defaults({ 'truck-payload': figure('12', 'ton') }),
    'defaults.truck-payload.number',
    'number must be a number, without quotes',
  ],
  [
    'a unit by another spelling',
    defaults({ 'truck-payload': figure(12, 'tons') }),
    'defaults.truck-payload.unit',
    'there is no tons here (did you mean ton?)',
  ],
  [
    'another dimension',
    defaults({ 'truck-payload': figure(12, 'ft') }),
    'defaults.truck-payload.unit',
    'truck-payload is a mass (ton, t), and ft is a length',
  ],
  [
    'a figure that cannot be',
    defaults({ 'unit-weight': figure(1120, 'lb/yd2/in') }),
    'defaults.unit-weight.number',
    '1120 lb/yd2/in is outside what unit-weight can be',
  ],
  [
    'a default that the rules would hide',
    defaults({ 'buffer-length': figure(400, 'ft') }),
    'defaults.buffer-length',
    `buffer-length ${workedOut}`,
  ],
  [
    'a default that a table would hide',
    defaults({ 'sign-spacing-a': figure(400, 'ft') }),
    'defaults.sign-spacing-a',
    `sign-spacing-a ${workedOut}`,
  ],
  [
    'a misspelt limit',
    limits({ 'lift-maximum': { max: figure(1.5, 'in') } }),
    'limits.lift-maximum',
    'there is no lift-maximum here (did you mean lift-max?)',
  ],
  [
    'the other end of a limit',
    limits({ 'lift-max': { min: figure(1.5, 'in') } }),
    'limits.lift-max.min',
    'lift-max has no min: give its max',
  ],
  [
    'a limit without a bound',
    limits({ 'lift-max': {} }),
    'limits.lift-max',
    'lift-max has neither a min nor a max: give the one that is yours',
  ],
  [
    'ends that cross',
    limits({ 'end-spread': { min: figure(3, 'ft'), max: figure(24, 'in') } }),
    'limits.end-spread',
    'the min, 3 ft, is above the max, 24 in',
  ],
  [
    'a bound of another dimension',
    limits({ 'lift-max': { max: figure(1.5, 'ton') } }),
    'limits.lift-max.max.unit',
    'lift-thickness is a length (in, mm), and ton is a mass',
  ],
  [
    'rows of a table that is not read by a choice',
    file({ tables: { 'stopping-sight': [] } }),
    'tables.stopping-sight',
    'there is no stopping-sight here; there is sign-spacing, spray-temperature',
  ],
  ['a row that is not in a list', file({ tables: { 'sign-spacing': row } }), at, 'a table is a list of rows'],
  [
    'a misspelt option',
    rows({ ...row, 'road-type': 'urban-hi' }),
    `${at}[0].road-type`,
    'there is no urban-hi here (did you mean urban-high?)',
  ],
  [
    'a row that is short of a figure',
    rows({ ...row, c: undefined }),
    `${at}[0].c`,
    'c must be a number, without quotes',
  ],
  [
    'a figure too many in a row',
    rows({ ...row, d: 400 }),
    `${at}[0].d`,
    'there is no d here; there is road-type, unit, a, b, c',
  ],
  ['less than nothing', rows({ ...row, a: -400 }), `${at}[0].a`, '-400 ft is outside what sign-spacing-a can be'],
  [
    'two rows for one option',
    rows(row, row),
    `${at}[1]`,
    'there are two rows for urban-high: keep one, or say up to which figure each one holds',
  ],
  ['rows by speed that fall', rows(upTo(30), upTo(25)), `${at}[1]`, rising],
  ['a row after the one without an end', rows(row, upTo(30)), `${at}[1]`, rising],
  ['a file beyond all size', file({ date: 'x'.repeat(70_000) }), '', 'the file is over 65536 characters'],
];

describe('a broken agency file', () => {
  test.each(broken)('%s', (_, agency, place, sentence) => {
    const reply = ask({ question: 'how many tons for 300 x 12 ft at 2 in', agency });
    expect(reply).toMatchObject({ kind: 'unknown', reason: 'no-rule', values: [], checks: [], working: [] });
    expect(reply.text).toBe(
      `The agency's rules cannot be used${place ? `, at ${place}` : ''}: ${sentence}. ` +
        'Mend the file; nothing is answered with the general figure in its place.',
    );
  });
});

describe('what is written of such files', () => {
  const docs = new URL('../../docs/', import.meta.url);
  const text = readFileSync(new URL('agency-rules.md', docs), 'utf8');

  test('shows a file that is right', () => {
    const [, shown] = /```json\n([^`]*)```/.exec(text)!;
    const reply = ask({ question: 'how many lifts for 3 in deep', agency: JSON.parse(shown!) });
    expect(reply.values[0]).toMatchObject({ quantity: 'lift-count', number: 2 });
  });

  test('tells faults as they are told', () => {
    const told = [...text.matchAll(/^\| .* \| at ([^:|]*): (.*) \|$/gm)].map(([, place, sentence]) => [
      place,
      sentence,
    ]);
    expect(told).toHaveLength(4);
    for (const [place, sentence] of told) {
      expect(broken.map(([, , at, words]) => `${at}: ${words}`)).toContain(`${place}: ${sentence}`);
    }
  });

  const examples = readdirSync(new URL('examples/', docs)).filter((name) => !name.includes('-rates-'));
  test.each(examples)('examples/%s can be used', (name) => {
    const agency = JSON.parse(readFileSync(new URL(`examples/${name}`, docs), 'utf8')) as unknown;
    expect(ask({ question: 'how many tons for 300 x 12 ft at 2 in', agency })).toMatchObject({ kind: 'value' });
  });
});

test('somebody hurt is answered first, whatever is wrong with the file', () => {
  const reply = ask({ question: 'a guy got burned by hot mix', agency: { name: 5 } });
  expect(reply).toMatchObject({ kind: 'card', topic: 'emergency-burn' });
  expect(reply.text).toMatch(/^Call the emergency number now/);
});
