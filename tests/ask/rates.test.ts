import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply } from '../../src/ask/reply.ts';

// FEMA, Schedule of Equipment Rates, 2025: 8331 grader 12 ft to 171 hp 131.96; 8332 to 196 hp 159.04; 8333 14 ft 231.47;
// 8222 vibratory drum roller 39.01; 8581 distributor 1,000 gal 33.08; 8150 broom 53.65; 8392 loader 64.66; 8050 arrow
// board 5.15; 8722 dump truck 12 yd3 120.74.
const rates: unknown = JSON.parse(
  readFileSync(new URL('../../docs/examples/fema-rates-2025.json', import.meta.url), 'utf8'),
);
const by = (question: string, job?: unknown): Reply => ask({ question, rates, ...(job ? { job } : {}) });
const cost = ({ values }: Reply) => values.find(({ quantity }) => quantity === 'equipment-cost')?.number;

describe('rates of machines in force', () => {
  test('grader 8331 and roller 8222 for 6 hours: (131.96 + 39.01) x 6 = 1,025.82, with all that tells where from', () => {
    const reply = by('what does a grader 8331 and a roller 8222 cost for 6 hours');
    expect(cost(reply)).toBeCloseTo(1025.82, 9);
    for (const words of ['Grader', '8331', '$131.96/h', '8222', '$39.01/h', '2025', 'FEMA', 'operator is left out'])
      expect(reply.text).toContain(words);
    expect(reply.working[0]).toMatchObject({ quantity: 'equipment-rate', result: '$170.97/h' });
    expect(reply.given.map(({ quantity }) => quantity)).toEqual(['work-hours']);
  });

  test('two rows fit a 12 ft grader and nine a roller: each is asked apart, and choosing leads to the figure', () => {
    const first = by('what does a 12 ft grader and a roller cost for 6 hours');
    expect(first).toMatchObject({ kind: 'clarify', reason: 'ambiguous' });
    expect(first.clarify?.choices.map(({ text }) => text.slice(0, 4))).toEqual(['8331', '8332']);
    const second = by(first.clarify!.choices[1]!.send, first.job);
    const roller = second.clarify?.choices.find(({ text }) => text.startsWith('8222'));
    const reply = by(roller!.send, second.job);
    expect(cost(reply)).toBeCloseTo((159.04 + 39.01) * 6, 9);
  });

  test('a crew of machines, 8 hours: 327.51 + 3 x 120.74 = 689.73 an hour, 5,517.84', () => {
    const reply = by(
      'equipment cost of grader 8331, roller 8222, a 1000 gal distributor, broom 8150, loader 8392, an arrow board and three 12 yard dump trucks for 8 hours',
    );
    expect(cost(reply)).toBeCloseTo(5517.84, 9);
  });

  test.each([
    ['two motor graders 8333 for 5 hours, what do they cost', 2 * 231.47 * 5],
    ['cost of a 14 ft motor grader for 5 hours', 231.47 * 5],
    ['what do 2 dump trucks code 8722 cost for 4 hours', 2 * 120.74 * 4],
    ['what do 2 2-ton single-drum rollers cost for 4 hours', 2 * 33.24 * 4],
  ])('%s', (question, number) => expect(cost(by(question))).toBeCloseTo(number, 9));

  test('what one costs an hour', () => {
    expect(by('hourly rate for a 14 ft grader').values[0]).toMatchObject({
      quantity: 'equipment-rate',
      number: 231.47,
    });
  });

  test.each([
    ['what does a paver and a 14 ft grader cost for 6 hours', 'paver'],
    ['hourly rate for a paver and a 14 ft grader', 'paver'],
    ['what does a grader 8330 cost for 6 hours', 'grader 8330'],
    ['what does a 13 ft grader cost for 6 hours', '13 ft grader'],
    ['what does a widener attachment 8335 cost for 6 hours', 'attachment 8335'],
  ])('nothing is added up without a rate: %s', (question, said) => {
    const reply = by(question);
    expect(reply.values).toEqual([]);
    expect(reply).toMatchObject({ kind: 'clarify', clarify: { quantity: 'equipment-rate' } });
    expect(reply.text).toContain(said);
  });

  test("the asker's own rate comes first, and that is said", () => {
    const reply = by('grader at $120/hr for 6 hours, equipment cost?');
    expect(cost(reply)).toBe(720);
    expect(reply.text).toContain('was not used');
  });

  test('without the file the rate is asked for; with it, machines can be named instead', () => {
    const question = 'equipment cost for 6 hours';
    expect(ask({ question })).toMatchObject({ kind: 'clarify', clarify: { quantity: 'equipment-rate' } });
    expect(by(question).text).toContain('FEMA');
    expect(ask({ question: 'what does a grader 8331 cost for 6 hours' }).text).not.toContain('131.96');
  });

  test('a question of something else is answered as without it', () => {
    const question = 'how many tons for 300 x 12 ft at 2 in';
    expect(by(question)).toEqual(ask({ question }));
  });
});

const row = { code: '8331', machine: 'grader', rate: 131.96, unit: 'USD/h' };
const file = (parts: object) => ({ name: 'A', year: 2025, source: 'B', seen: 'C', rates: [row], ...parts });
const rows = (...parts: object[]) => file({ rates: parts.map((part) => ({ ...row, ...part })) });

test.each<readonly [string, unknown, string]>([
  ['no file', 'rates', 'the file must be an object'],
  ['no year', file({ year: undefined }), 'at year: year must be the year of the schedule'],
  ['a year in quotes', file({ year: '2025' }), 'at year: '],
  ['no source', file({ source: '' }), 'at source: source must be one line of text'],
  ['no rows', file({ rates: [] }), 'at rates: rates must be a list of rows'],
  ['a misspelt part', file({ rtaes: [] }), 'at rtaes: there is no rtaes here (did you mean rates?)'],
  ['a code twice', rows({}, { rate: 3 }), 'at rates[1].code: code 8331 stands at rates[0] already'],
  ['a code that is a number', rows({ code: 8331 }), 'at rates[0].code: code must be in quotes'],
  ['a rate in quotes', rows({ rate: '131.96' }), 'at rates[0].rate: rate must be a number, without quotes'],
  ['a rate that cannot be', rows({ rate: 13196 }), 'at rates[0].rate: 13196 is outside'],
  ['another unit', rows({ unit: 'USD/day' }), 'at rates[0].unit: unit must be "USD/h"'],
  ['a size without unit', rows({ size: { number: 12 } }), 'at rates[0].size.unit: '],
  ['a column of its own', rows({ hp: 171 }), 'at rates[0].hp: there is no hp here'],
])('a file with a fault is not used, and the place is named: %s', (_, sent, sentence) => {
  const reply = ask({ question: 'grader at $120/hr for 6 hours, equipment cost?', rates: sent });
  expect(reply).toMatchObject({ kind: 'unknown', reason: 'no-rule', values: [] });
  expect(reply.text).toContain(sentence);
});

describe('what is written of such files', () => {
  const text = readFileSync(new URL('../../docs/equipment-rates.md', import.meta.url), 'utf8');

  test('shows a file that is right', () => {
    const [, shown] = /```json\n([^`]*)```/.exec(text)!;
    const reply = ask({ question: 'hourly rate for a 12 ft grader', rates: JSON.parse(shown!) });
    expect(reply.values[0]).toMatchObject({ quantity: 'equipment-rate', number: 131.96 });
  });

  test('tells faults as they are told', () => {
    const files = [file({ year: '2025' }), rows({ unit: 'USD/day' }), rows({ hp: 171 })];
    const said = [...text.matchAll(/^\| `.*` \| (at .*) \|$/gm)].map(([, sentence]) => sentence!);
    expect(said).toHaveLength(files.length);
    for (const [i, sent] of files.entries())
      expect(ask({ question: 'hourly rate for a grader', rates: sent }).text).toContain(said[i]);
  });
});
