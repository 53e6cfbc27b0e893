import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fold, setting } from '../../../src/ask/book/book.ts';
import { type Change, stampAfter } from '../../../src/ask/book/change.ts';
import { crewOf } from '../../../src/ask/book/crew.ts';
import { layoutOfJob } from '../../../src/ask/book/layout.ts';
import { type Sheet, sheetOf } from '../../../src/ask/book/sheet.ts';
import { totalsOf } from '../../../src/ask/book/totals.ts';
import { engine } from '../../../src/ask/engine.ts';
import type { Unit } from '../../../src/calc/units.ts';

type Line = readonly [line: string, set: Change['set']];
const is = (number: number, unit: Unit) => ({ number, unit });
const fema = JSON.parse(readFileSync('docs/examples/fema-rates-2025.json', 'utf8')) as unknown;

function sheet(lines: readonly Line[]): Sheet {
  const changes: Change[] = [];
  for (const [line, set] of lines) {
    const book = fold(changes);
    changes.push(setting(book, line, set, { stamp: stampAfter(book.last, 1000, 'phone1') }));
  }
  return sheetOf(fold(changes), engine.knowledge);
}
const worked = (lines: readonly Line[]) => {
  const own = sheet(lines);
  const totals = totalsOf(engine, own);
  return { totals, crew: crewOf(engine, own, totals) };
};
const size = (length: number, width: number, depth: number) => ({
  'patch-length': is(length, 'ft'),
  'patch-width': is(width, 'ft'),
  'patch-depth': is(depth, 'in'),
});

// FEMA, Schedule of Equipment Rates, 2025: the rows of this spread, added up by hand: 131.96 + 39.01 + 33.08 + 53.65 +
// 64.66 + 5.15 = 327.51 an hour, and three dump trucks at 120.74 make 689.73; eight hours are 5,517.84.
const spread =
  'grader 8331, roller 8222, distributor 8581, broom 8150, loader 8392, arrow board 8050 and 3 dump trucks 8722';

describe('hours and cost of a job', () => {
  test('machines are priced by a published schedule: the whole spread an hour and a day', () => {
    const { totals, crew } = worked([
      ['job', { rates: { rules: fema }, machines: spread, 'work-hours': is(8, 'h') }],
      ['patch/a', { label: '1', ...size(300, 12, 2) }],
    ]);
    expect(crew.priced.every((each) => 'row' in each)).toBe(true);
    expect(totals.job.get('equipment-rate')!.value * 3600).toBeCloseTo(689.73, 9);
    expect(totals.job.get('equipment-cost')!.value).toBeCloseTo(5517.84, 6);
  });

  test('a machine that more than one row fits, or none, is named, and nothing is added up', () => {
    const { totals, crew } = worked([
      ['job', { rates: { rules: fema }, machines: '12 ft grader and a paver', 'work-hours': is(8, 'h') }],
    ]);
    expect(crew.priced.map((each) => ('fits' in each ? each.fits.length : 'none' in each ? each.said : 'one'))).toEqual(
      [2, 'paver'],
    );
    expect(totals.job.get('equipment-cost')).toBeUndefined();
    // A rate that was told goes before the schedule.
    const told = worked([
      [
        'job',
        { rates: { rules: fema }, machines: spread, 'equipment-rate': is(400, 'USD/h'), 'work-hours': is(8, 'h') },
      ],
    ]);
    expect(told.totals.job.get('equipment-cost')!.value).toBeCloseTo(3200, 9);
  });

  const job: Line[] = [
    [
      'job',
      {
        'material-price': is(85, 'USD/ton'),
        'labor-rate': is(38, 'USD/h'),
        'crew-size': is(8, '1'),
        'work-hours': is(16, 'h'),
      },
    ],
    ['patch/a', { label: '1', ...size(300, 12, 2) }],
    ['load/1', { patch: 'patch/a', 'placed-mass': is(20, 'ton') }],
    ['hours/1', { who: 'JD', 'work-hours': is(9, 'h') }],
    ['hours/2', { who: 'jd', 'work-hours': is(1, 'h') }],
    ['hours/3', { who: 'MK', 'work-hours': is(8, 'h'), 'labor-rate': is(40, 'USD/h') }],
    ['hours/4', { machine: 'grader', 'work-hours': is(6, 'h'), 'equipment-rate': is(150, 'USD/h') }],
  ];

  test('planned against written down, and what is spent: 20 × 85, 10 × 38 + 8 × 40, 6 × 150 by hand', () => {
    const { crew, totals } = worked(job);
    expect(crew.people.map(({ name, hours, cost }) => [name, hours / 3600, Math.round(cost!)])).toEqual([
      ['JD', 10, 380],
      ['MK', 8, 320],
    ]);
    expect(crew.planned.labor! / 3600).toBe(128);
    expect(crew.planned.grading).toBe(totals.patches[0]!.figures['grading-time']!.value);
    const { material, labor, equipment, total, unpriced } = crew.spent;
    expect([material, labor, equipment, total].map((cost) => Math.round(cost! * 100) / 100)).toEqual([
      1700, 700, 900, 3300,
    ]);
    expect(unpriced).toEqual({ mix: false, labor: false, machines: [] });
  });

  test('what has no price is named and no whole is told', () => {
    const { crew } = worked([...job, ['hours/5', { machine: 'roller', 'work-hours': is(6, 'h') }]]);
    expect(crew.spent.total).toBeUndefined();
    expect(crew.spent.unpriced.machines).toEqual(['roller']);
    // By the schedule it has one: 39.01 an hour.
    const priced = worked([
      ...job,
      ['job', { rates: { rules: fema } }],
      ['hours/5', { machine: 'roller 8222', 'work-hours': is(6, 'h') }],
    ]);
    expect(priced.crew.spent.total).toBeCloseTo(3300 + 6 * 39.01, 6);
  });
});

describe('order of work', () => {
  const patches: Line[] = [
    ['patch/a', { label: '1', station: '10+00', lane: 'RT' }],
    ['patch/b', { label: '2', station: '20+00', lane: 'LT', 'edge-drop': is(3.5, 'in') }],
    ['patch/c', { label: '3', station: '30+00', lane: 'rt', repair: 'fix-drainage-first', 'edge-drop': is(4, 'in') }],
    ['patch/d', { label: '4', station: '40+00', 'edge-drop': is(2.5, 'in') }],
    ['patch/e', { label: '5', station: '50+00', lane: 'LT' }],
  ];
  const labels = (set: Change['set']): string =>
    worked([['job', set], ...patches])
      .totals.patches.map(({ patch }) => patch.label)
      .join('');
  test.each([
    ['along the road', {}, '12345'],
    ['the other way', { direction: 'down' }, '54321'],
    ['one lane after the other', { order: 'lane' }, '25134'],
    ['one lane after the other, the other way', { order: 'lane', direction: 'down' }, '52314'],
    // Over 3 in cannot be left, over 2 in is flagged (limit drop-off); what is to be drained first waits.
    ['the worst drop-offs first', { order: 'urgent' }, '24153'],
  ] as const)('%s', (_name, set, expected) => {
    expect(labels(set)).toBe(expected);
  });
});

describe('traffic layout of a job', () => {
  const patches: Line[] = [
    ['patch/a', { label: '1', ...size(300, 12, 2), done: true }],
    ['patch/b', { label: '2', ...size(100, 12, 2) }],
    ['patch/c', { label: '3', ...size(200, 12, 2) }],
  ];
  const told = { 'posted-speed': is(45, 'mph'), 'road-type': 'rural' } as const;
  const layout = (set: Change['set'], lines = patches) =>
    layoutOfJob(engine, worked([['job', set], ...lines]).totals, 'us');

  test('is drawn for the longest patch that is still to be laid, once speed and road are told', () => {
    expect(layout({ name: 'x' })).toBeUndefined();
    const found = layout(told)!;
    expect(found.patch.patch.label).toBe('3');
    expect(found.zone.layout.length).toBeGreaterThan(5);
    expect(found.zone.load.length).toBeGreaterThan(0);
    // Rural: 500 ft for each of A, B and C (MUTCD Table 6B-1), buffer 360 ft at 45 mph (Table 6B-2), a taper of 100 ft.
    expect(Math.max(...found.zone.layout.map(({ at }) => at))).toBeCloseTo(1500 + 100 + 360, 6);
  });
});
