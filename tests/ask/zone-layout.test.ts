import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Place, Reply } from '../../src/ask/reply.ts';
import { ZonePlan } from '../../src/ask/views/drawn/zone.tsx';
import { toBase } from '../../src/calc/quantity.ts';
import { sayFigure } from '../../src/calc/wording.ts';

const talk = (...questions: readonly string[]): Reply => {
  let reply = ask({ question: questions[0]! });
  for (const question of questions.slice(1)) reply = ask({ question, job: reply.job });
  return reply;
};
const drawing = (places: readonly Place[]): string => String(ZonePlan({ places, name: 'x' }));
const said = (number: number, unit: Place['unit']): string => sayFigure(toBase(number, unit), unit, { rounding: 'up' });

const flaggers = 'lay out the zone for a 300 ft patch at 45 mph on a two-lane county road';
const layouts: readonly (readonly [string, string, number])[] = [
  // MUTCD 11th ed., Tables 6B-1 to 6B-3: 6 × 500 + 100 + 360 + 300 + 100.
  ['flaggers', flaggers, 3860],
  // The same tables: 1,000 + 1,500 + 2,640 + 12 × 65 + 645 + 1,500 + 100.
  ['lane closed', 'lay out a lane closure on a four lane freeway at 65 mph, 12 ft lane, 1500 ft of work', 8165],
  // 2 × 500 + 10 × 55 ÷ 3 + 495 + 300.
  ['shoulder', 'lay out a closed 10 ft shoulder at 55 mph on a rural road, 300 ft of work', 1978.333333],
  ['in meters', 'lay out the zone with flaggers for a 100 m patch at 80 km/h on a rural road', 1205.36],
];

describe.each(layouts)('%s', (_, question, total) => {
  const { layout, load, values } = ask({ question });

  test('the reply carries the layout, and it is as long as the figure', () => {
    const work = layout.find(({ part }) => part === 'work')!.length!;
    const ends = layout.flatMap(({ at, side, length = 0 }) => {
      const from = side === 'past' ? work + at : -at;
      return [from, from + length];
    });
    expect(Math.max(...ends) - Math.min(...ends)).toBeCloseTo(total, 2);
    expect(values[0]!.number).toBeCloseTo(total, 2);
    expect(load.find(({ part }) => part === 'cones')!.count).toBeGreaterThan(5);
  });

  test('every distance is read back out of the drawing', () => {
    const svg = drawing(layout);
    for (const { part, side, at, unit, length, lengthText, spacingText } of layout) {
      if (part === 'work-end') continue;
      const group = svg.split('<g data-part').find((each) => each.startsWith(`="${part}" data-side="${side}"`))!;
      expect(group).toContain(`data-at="${at}"`);
      if (length === undefined) {
        expect(group).toContain(`>${said(at, unit)} ${side === 'past' ? 'past' : 'to'} work<`);
      } else {
        expect(group).toContain(`data-length="${length}"`);
        expect(group).toContain(`>cones every ${spacingText}<`);
        expect(svg).toContain(`>${lengthText}<`);
      }
    }
    const figures = [...svg.matchAll(/data-from="([^"]+)" data-to="([^"]+)"/g)].map(([, from, to]) => [+from!, +to!]);
    expect(figures.at(-1)![1]! - figures[0]![0]!).toBeCloseTo(total, 2);
    for (const [i, [from]] of figures.entries()) if (i > 0) expect(from).toBe(figures[i - 1]![1]);
    expect(svg).toContain(`In all ${said(total, layout[0]!.unit)}`);
    expect(svg.match(/<title/g)).toHaveLength(1);
    expect(svg).not.toContain('style=');
  });
});

describe('changed in conversation', () => {
  test('another speed, another layout, another length: the drawing follows', () => {
    const asked = [flaggers, 'make it 55', "it's a shoulder closure", 'patch is 500 ft'];
    const replies = asked.map((_, at) => talk(...asked.slice(0, at + 1)));
    expect(replies.map(({ topic }) => topic)).toEqual([
      'zone-length',
      'zone-length',
      'shoulder-zone-length',
      'shoulder-zone-length',
    ]);
    const totals = replies.map(({ layout }) => /In all ([\d,]+) ft/.exec(drawing(layout))?.[1]);
    // 495 ft of buffer in place of 360; then 2 × 500 + 12 × 55 ÷ 3 + 495 + 300; then 200 ft more.
    expect(totals).toEqual(['3,860', '3,995', '2,015', '2,215']);
  });
});

test("a row of an agency's own moves the signs, and the agency is named", () => {
  const agency = {
    name: 'Alder County Road Department',
    source: 'Maintenance directive 7, 2026',
    date: '2026-03-01',
    tables: { 'sign-spacing': [{ 'road-type': 'rural', a: 600, b: 700, c: 800, unit: 'ft' }] },
  };
  const reply = ask({ question: flaggers, agency });
  const signs = reply.layout.filter(({ side, part }) => side === 'approach' && /ahead/.test(part!));
  expect(signs.map(({ at }) => at)).toEqual([460 + 2100, 460 + 1300, 460 + 600]);
  expect(drawing(reply.layout)).toContain('>2,560 ft to work<');
  expect(reply.text).toContain('Alder County Road Department');
});

test.each([
  ['the length of the work', 'lay out the zone with flaggers at 45 on a county road', 'patch-length'],
  ['the kind of road', 'lay out the zone with a lane closed on the four-lane at 45, 300 ft patch', 'road-type'],
  ['the layout', 'lay out the zone for a 300 ft patch at 45 mph in a rural area', 'layout-kind'],
])('%s is asked for, never guessed', (_, question, quantity) => {
  expect(ask({ question })).toMatchObject({ kind: 'clarify', clarify: { quantity }, layout: [] });
});

describe('what cannot be worked is asked back or refused, with the reason', () => {
  test.each([
    [
      'a speed over 85 mph',
      'merging taper at 90 mph, 12 ft lane',
      'posted-speed',
      /90 mph is unlikely.*15 mph to 85 mph/,
    ],
    ['a speed under 15 mph', 'buffer for 10 mph posted', 'posted-speed', /10 mph is unlikely/],
    ['a bare speed', 'buffer at 95', 'posted-speed', /95 is unlikely/],
    ['a width no lane has', 'merging taper at 55 for a 50 ft offset', 'offset', /50 ft is unlikely.*3 ft to 40 ft/],
    ['lanes in place of feet', 'merging taper for two lanes closed at 65', 'offset', /unlikely/],
  ])('%s', (_, question, quantity, text) => {
    expect(ask({ question })).toMatchObject({
      kind: 'clarify',
      reason: 'out-of-range',
      clarify: { quantity },
      text: expect.stringMatching(text),
    });
  });

  test('past the end of the table no buffer is told', () => {
    expect(ask({ question: 'buffer at 80 mph' })).toMatchObject({ kind: 'unknown', reason: 'out-of-range' });
  });

  test('a taper whose kind nothing settles is asked for', () => {
    expect(ask({ question: 'taper at 55 mph' })).toMatchObject({
      kind: 'clarify',
      clarify: { quantity: 'taper-kind' },
    });
  });

  test('more than one lane is a caution beside the length', () => {
    const { checks } = ask({ question: 'merging taper at 55 mph for a 24 ft offset' });
    expect(checks.find(({ rule }) => rule === 'one-lane-at-a-time')).toMatchObject({ status: 'caution' });
  });
});

describe('what is asked of a limit without a figure is told with the limit', () => {
  test.each([
    ['cone height on the freeway', /18 in .* 28 in/],
    ['how wide does the open lane have to be', /10.0 ft is recommended/],
    ['how much can we drop the speed limit', /no drop of more than 10 mph/],
    ['how long can we close the road completely', /20 min at most/],
    ['sign height on a rural road', /5 ft .* 7 ft .* 1 ft/],
    ['do signs have to be lit at night', /signs shall be retroreflective or lit/],
    ['do I need a sign before the flagger', /shall stand before every flagger station/],
  ])('%s', (question, text) => {
    expect(ask({ question }).text).toMatch(text);
  });
});
