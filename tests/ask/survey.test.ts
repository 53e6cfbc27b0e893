import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply, Request } from '../../src/ask/reply.ts';
import { replySchema } from '../../src/server/schema/reply.ts';

/** The reply, held against the schema, its job through JSON as a caller sends it back. */
function told(question: string, after?: Reply, more: Partial<Request> = {}): Reply {
  const job: unknown = after && JSON.parse(JSON.stringify(after.job));
  const reply = ask({ question, ...(job ? { job } : {}), ...more });
  replySchema.parse(JSON.parse(JSON.stringify(reply)));
  return reply;
}

const figure = ({ values }: Reply, id: string): number | undefined =>
  values.find(({ quantity }) => quantity === id)?.number;
const lifts = ({ survey }: Reply): number[] | undefined => survey?.stations.map((station) => station.lifts);
const fill = ({ survey }: Reply): string[] | undefined => survey?.fill.map(({ label }) => label);

/** Ten readings at 10 ft by 12 ft; 1 in all along is 120 yd2 × 110 lb ÷ 2,000 = 6.6 tons. */
describe('ten readings, one of them deep', () => {
  const flat = told('readings every 10 ft: 1 1 1 1 1 1 1 1 1 1 in across 12 ft');
  const deep = told('readings every 10 ft: 1 1 1 1 1 3 1 1 1 1 in across 12 ft');

  test('changes the volume and the tons: 2 in more over 10 × 12 ft is 20 ft3, 20 × 146.67 lb', () => {
    expect(figure(flat, 'premix-mass')).toBeCloseTo(6.6, 9);
    expect(figure(deep, 'premix-mass')).toBeCloseTo(6.6 + (20 * 440) / 3 / 2000, 9);
    expect(figure(deep, 'patch-volume')).toBeCloseTo(110 / 27, 9);
  });

  test('changes the lifts there and nowhere else, and what is filled first', () => {
    expect(lifts(flat)).toEqual([1, 1, 1, 1, 1, 1, 1, 1, 1, 1]);
    expect(lifts(deep)).toEqual([1, 1, 1, 1, 1, 3, 1, 1, 1, 1]);
    expect(fill(flat)).toEqual([]);
    expect(fill(deep)).toEqual(['50 ft']);
    expect(deep.text).toContain('Deepest: 3 in at 50 ft: 3 lifts there.');
  });

  test('follow-ups go on with it', () => {
    expect(figure(told('and the tack?', deep), 'tack-volume')).toBeCloseTo(120 * (0.05 / 0.6), 9);
    expect(figure(told('at 4 ton loads?', deep), 'truck-count')).toBe(3);
    const wider = told('what if it is 14 ft wide', deep);
    expect(figure(wider, 'premix-mass')).toBeCloseTo(((110 / 12) * 14 * 440) / 3 / 2000, 9);
    expect(told('which lows do I fill first?', wider).text).toContain('Fill first: 50 ft (3 in)');
  });

  test('a new depth takes the place of the readings', () => {
    const other = told('what if it is 2 in deep all over', deep);
    expect(other.job.survey).toBeUndefined();
  });

  test('carries values, working, checks and caution', () => {
    expect(deep.working.map(({ quantity }) => quantity)).toEqual(
      expect.arrayContaining(['patch-volume', 'patch-depth', 'premix-mass']),
    );
    expect(deep.cautions.join(' ')).toMatch(/straightedge/);
    expect(told('how many lifts is that', deep).checks.map(({ rule }) => rule)).toContain('lift-max');
  });
});

/** 0, .4, .8, 1.0, .7, .3, 0 in at 1 ft: 3.2 in by trapezoids, 9.8 ÷ 3 by Simpson; over 100 ft. */
test('one section across: both volumes, and the difference', () => {
  const reply = told('readings across the lane every 1 ft: 0 .4 .8 1.0 .7 .3 0 in, 100 ft long');
  expect(reply.survey?.volumes.map(({ method }) => method)).toEqual(['trapezoid', 'simpson']);
  expect(figure(reply, 'patch-volume')).toBeCloseTo((3.2 / 12) * (100 / 27), 9);
  expect(figure(reply, 'patch-volume-simpson')).toBeCloseTo((9.8 / 36) * (100 / 27), 9);
  expect(reply.text).toContain('2.1 % more');
});

/** Sections of 15, 18 and 13.5 in·ft (12 ft × 1.3125, 1.5, 1.25 in by trapezoids) at 25 ft. */
const rows = [
  'sta 0+00 1.25 1.5 1, 0+25 1 2 1, 0+50 1 1.5 1, 12 ft wide',
  '0+00: 1 1/4, 1 1/2, 1; 0+25: 1, 2, 1; 0+50: 1, 1 1/2, 1 – 12 ft wide',
  'station,left,center,right\n0+00,1.25,1.5,1\n0+25,1,2,1\n0+50,1,1.5,1\n12 ft wide',
  'sta (ft);left (in);cl (in);right (in)\r\n0;1,25;1,5;1\r\n25;1;2;1\r\n50;1;1,5;1\r\n12 ft wide',
  '12 ft wide, readings\n0+00\t1.25\t1.5\t1\n0+25\t1\t2\t1\n0+50\t1\t1.5\t1',
  '12 ft lane survey\n0 1.25 1.5 1\n25 1 2 1\n50 1 1.5 1',
  'station,0 ft,6 ft,12 ft\n0,1.25,1.5,1\n25,1,2,1\n50,1,1.5,1',
  'station,left,center,right 0+00,1.25,1.5,1 0+25,1,2,1 0+50,1,1.5,1 12 ft wide',
  'readings every 25 ft, 12 ft wide: 1.25 1.5 1 / 1 2 1 / 1 1.5 1 in',
];
test.each(rows)('rows as they are typed or pasted: %j', (question) => {
  const reply = told(question);
  const areas = [1.3125 * 12, 1.5 * 12, 1.25 * 12];
  const cubicInchFeet = 25 * (areas[0]! / 2 + areas[1]! + areas[2]! / 2);
  expect(reply.kind).toBe('value');
  expect(reply.survey?.stations.map(({ readings }) => readings)).toEqual([
    [1.25, 1.5, 1],
    [1, 2, 1],
    [1, 1.5, 1],
  ]);
  expect(figure(reply, 'patch-volume')).toBeCloseTo(cubicInchFeet / 12 / 27, 9);
  expect(reply.survey?.stations.map(({ at }) => at)).toEqual([0, 25, 50]);
});

test.each([
  'depth at 0, 25, 50 ft: 1, 2, 1 in, 12 ft wide, how many tons',
  'at 0 ft 1 in, at 25 ft 2 in, at 50 ft 1 in, 12 ft wide',
  '3 readings 25 ft apart: 1, 2, 1 in on an 12 ft lane',
  'readings 1 2 1 in over 50 ft, 12 ft wide',
])('places and depths in a line: %j', (question) => {
  expect(figure(told(question), 'premix-mass')).toBeCloseTo((1.5 * 50 * 12 * 440) / 3 / 12 / 2000, 9);
});

test('metres and millimetres', () => {
  const reply = told('lecturas cada 5 m: 25 30 60 30 25 mm, ancho 3,5 m');
  expect(figure(reply, 'patch-volume')).toBeCloseTo(20 * 3.5 * 0.03625, 9);
  expect(reply.survey?.units).toEqual({ along: 'm', across: 'm', depth: 'mm' });
});

describe('rows that cannot be read', () => {
  const csv = 'station,left,center,right\n0,1.25,1.5,1\n25,1,2,1\n50,1,abc,1\n75,1,1\n100,1,1,1\n12 ft wide';
  const asked = told(csv);

  test('are named by line, and nothing is worked from the rest', () => {
    expect(asked.kind).toBe('clarify');
    expect(asked.values).toEqual([]);
    expect(asked.text).toContain('line 4: 50,1,abc,1 (“abc” is no depth)');
    expect(asked.text).toContain('line 5: 75,1,1 (2 of 3 readings)');
  });

  test('are sent again, one by one, and nothing is lost', () => {
    const one = told('50,1,1.5,1', asked);
    expect(one.kind).toBe('clarify');
    expect(one.text).toContain('75,1,1');
    const both = told('75,1,1,1', one);
    expect(both.survey?.stations.map(({ at }) => at)).toEqual([0, 25, 50, 75, 100]);
    expect(both.kind).toBe('value');
  });

  test('are left out when that is said', () => {
    const rest = told('leave it out', asked);
    expect(rest.survey?.stations.map(({ at }) => at)).toEqual([0, 25, 100]);
  });

  test.each([
    ['0+00 1 1 1, 0+25 1 2 1, 0+25 1 3 1, 12 ft wide', 'is there twice'],
    ['0+00 1 1 1, 0+25 1 x 1, 0+50 1 1 1, 12 ft wide', '“x” is no depth'],
    ['station,depth in\n0,1\n25,\n50,1', 'no depth in it'],
    ['station,depth in\n0,1\n25,38\n50,1', '38 is deeper than a patch can be'],
    ['station,depth in\n0,1\n2s5,1\n50,1', 'no station at its head'],
  ])('%j: %s', (question, why) => {
    const reply = told(question);
    expect(reply.kind).toBe('clarify');
    expect(reply.text).toContain(why);
  });
});

describe('what is lacking is asked for', () => {
  test('the step, then the width', () => {
    const asked = told('readings 1, 1 1/2, 2, 1 in under a 10 ft straightedge, 12 ft wide');
    expect(asked.clarify?.quantity).toBe('reading-spacing');
    const reply = told('25 ft', asked);
    expect(reply.survey?.straightedge).toEqual({ number: 10, unit: 'ft' });
    expect(figure(reply, 'patch-area')).toBeCloseTo(100, 9);
    const narrow = told('25 ft', told('readings 1, 1 1/2, 2, 1 in'));
    expect(narrow.kind).toBe('clarify');
  });

  test('a count that does not fit is told', () => {
    expect(told('5 readings every 10 ft: 1 1 1 1 in, 12 ft wide').text).toContain('You said 5 readings; 4 were read.');
  });
});

test.each([
  'how many tons for 300 x 12 ft at 2 in',
  'sta 12+50 to 14+00, 12 ft wide, 1.5 inch, how many tons',
  'two patches, 12 x 40 at 2 in and 10 x 60 at 1 in',
  'how many depth readings should i take and where',
  'cones every 20 ft on a 100 ft taper',
  '12 x 40 at 2 in\n10 x 60 at 1 in',
])('no readings in %j', (question) => {
  expect(told(question).survey).toBeUndefined();
});

test('a lift limit of an agency counts the lifts', () => {
  const agency = {
    name: 'Alder County',
    source: 'directive 7',
    limits: { 'lift-max': { max: { number: 1.5, unit: 'in' } } },
  };
  expect(lifts(told('readings every 10 ft: 1 1.5 3 in, 12 ft wide', undefined, { agency }))).toEqual([1, 1, 2]);
});

test('holds for any text', () => {
  const bits = fc.constantFrom(
    'readings ',
    '0+00',
    ' 1 1/2',
    ',',
    '\n',
    ' every 10 ft',
    ' 12 ft wide',
    ' -',
    '3',
    ';',
    ' in',
    'abc',
    ' across ',
    '0+25',
    '"',
    ' mm',
  );
  fc.assert(
    fc.property(
      fc.array(bits, { maxLength: 25 }).map((parts) => parts.join('')),
      (question) => {
        told(question);
      },
    ),
    { seed: 7, numRuns: 300 },
  );
});

describe('a long list in parts', () => {
  const row = (station: number): string => `${station},1,${station === 100 ? 3 : 2},1`;
  const part = (from: number, to: number): string =>
    Array.from({ length: (to - from) / 25 + 1 }, (_, i) => row(from + 25 * i)).join('\n');
  const whole = told(`station,left,center,right\n${part(0, 175)}\n12 ft wide`);
  const first = told(`station,left,center,right\n${part(0, 75)}\n12 ft wide`);

  test.each([part(100, 175), `station,left,center,right\n${part(100, 175)}`])('gives what it gives at once', (rest) => {
    const both = told(rest, first);
    expect(figure(both, 'premix-mass')).toBeCloseTo(figure(whole, 'premix-mass')!, 9);
    expect(lifts(both)).toEqual(lifts(whole));
    expect(both.text).toContain('Added to the 4 rows sent before');
  });

  test('rows from elsewhere on the road are another patch', () => {
    const other = told(`station,left,center,right\n${part(1000, 1075)}`, first);
    expect(lifts(other)).toHaveLength(4);
    expect(other.text).not.toContain('Added');
  });

  test('a row of the second part that cannot be read is named, the first part stays', () => {
    const asked = told(`station,left,center,right\n${row(100)}\n125,1,abc,1\n${row(150)}`, first);
    expect(asked.text).toContain('125,1,abc,1');
    const sent = told('125 1 2 1', asked);
    expect(lifts(sent)).toHaveLength(7);
  });

  test('more than can be kept is said, and what was kept stays', () => {
    let reply = first;
    for (let from = 100; from < 5000 && reply.kind === 'value'; from += 500)
      reply = told(part(from, from + 475), reply);
    expect(reply.kind).toBe('unknown');
    expect(reply.reason).toBe('out-of-range');
    expect(reply.text).toMatch(/over 600 depth readings/);
    expect(reply.job.survey?.rows.length).toBe(184);
  });
});
