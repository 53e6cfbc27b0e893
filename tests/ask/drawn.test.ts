import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply } from '../../src/ask/reply.ts';
import { Drawings } from '../../src/ask/views/layout.tsx';

const drawing = (reply: Reply): string => String(Drawings({ reply, name: 'x' }) ?? '');
const data = (svg: string, name: string): number[] =>
  [...svg.matchAll(new RegExp(`data-${name}="([^"]+)"`, 'g'))].map(([, figure]) => Number(figure));
const value = ({ values }: Reply, id: string) => values.find(({ quantity }) => quantity === id)!;

describe('the patch in section', () => {
  // Lifts of an inch at most: 3 in is three of them; loose is 1.25 times rolled.
  const reply = ask({ question: 'how many lifts for 3 in deep' });
  const svg = drawing(reply);

  test('as many lifts as the answer has, in order from the bottom, each as thick as it says', () => {
    expect(value(reply, 'lift-count').number).toBe(3);
    expect(data(svg, 'lift')).toEqual([1, 2, 3]);
    for (const inches of data(svg, 'thickness')) expect(inches).toBeCloseTo(1, 9);
    expect(data(svg, 'depth')[0]).toBeCloseTo(3, 9);
    expect(data(svg, 'loose')[0]).toBeCloseTo(1.25, 9);
    for (const words of ['lift 1: 1 in', 'lift 3: 1 in', 'loose: 1 1/4 in', '>3 in<']) expect(svg).toContain(words);
  });

  test('nothing is drawn that the answer does not hold', () => {
    expect(drawing({ ...reply, values: reply.values.slice(0, 1) })).toBe('');
    expect(drawing(ask({ question: 'merging taper 55 mph 12 foot lane' }))).toBe('');
  });

  test('in metric', () => {
    const metric = ask({ question: 'how many lifts for 75 mm deep' });
    expect(drawing(metric)).toContain(value(metric, 'lift-thickness').text);
  });
});

describe('roller lanes', () => {
  // 12 ft and 6 in past each edge, a 4.5 ft drum: four lanes.
  const reply = ask({ question: 'how many roller lanes for 12 ft' });
  const svg = drawing(reply);
  const [from, to] = [data(svg, 'from'), data(svg, 'to')];

  test('numbered from the low side, from one edge to the other, each a drum wide', () => {
    expect(data(svg, 'lane')).toEqual([1, 2, 3, 4]);
    expect(from[0]).toBe(0);
    expect(to.at(-1)).toBeCloseTo((12 + 2 * 0.5) * 12, 9);
    for (const [at, start] of from.entries()) expect(to[at]! - start).toBeCloseTo(54, 9);
  });

  test('neighbours overlap by at least what is said', () => {
    for (let at = 1; at < from.length; at++) expect(to[at - 1]! - from[at]!).toBeGreaterThanOrEqual(6);
    expect(data(svg, 'width')[0]).toBeCloseTo(144, 9);
    for (const words of ['low side', 'high side', 'drum 4.5 ft', '6 in', '12 ft']) expect(svg).toContain(words);
  });
});

test('the row has the height and the foot of the answer', () => {
  const reply = ask({ question: 'how big is the windrow for 12 ft at 1 in' });
  const svg = drawing(reply);
  expect(data(svg, 'height')[0]! / 12).toBeCloseTo(value(reply, 'windrow-height').number, 9);
  expect(data(svg, 'base')[0]! / 12).toBeCloseTo(value(reply, 'windrow-base').number, 9);
  for (const id of ['windrow-height', 'windrow-base']) expect(svg).toContain(`>${value(reply, id).text}<`);
});

describe('dump points', () => {
  const { job } = ask({ question: 'how many tons for 300 ft x 12 ft x 2 in' });
  const reply = ask({ question: 'how far apart do we dump 15 ton loads', job });
  const svg = drawing(reply);

  test('one load every so many feet, from the start to the end of the patch', () => {
    // 30,000 lb on 12 ft at 2 in and 110 lb/sq yd/in.
    const apart = (30000 / ((12 / 3) * 2 * 110)) * 3;
    expect(value(reply, 'dump-spacing').number).toBeCloseTo(apart, 6);
    expect(reply.layout.map(({ at }) => at)).toEqual([0, apart, 2 * apart, 300].map((x) => expect.closeTo(x, 6)));
  });

  test('every distance is read back out of the drawing', () => {
    expect(data(svg, 'at')).toEqual(reply.layout.map(({ at }) => at));
    const at = reply.layout.map((place) => place.at);
    expect(data(svg, 'apart')).toEqual(at.slice(1).map((x, i) => expect.closeTo(x - at[i]!, 9)));
    for (const { at: from, atText } of reply.layout) if (from > 0) expect(svg).toContain(`${atText} from the start`);
  });

  test('none where the length of the patch is not known', () => {
    expect(ask({ question: 'how far apart do we dump 15 ton loads, 12 ft wide, 2 in deep' }).layout).toEqual([]);
  });
});

test('every drawing has its words, takes the ink of the page and no style of its own', () => {
  for (const question of [
    'how many lifts for 3 in deep',
    'how many roller lanes for 12 ft',
    'how big is the windrow for 12 ft at 1 in',
  ]) {
    const svg = drawing(ask({ question }));
    expect(svg).toMatch(/role="img" aria-labelledby="x-title x-desc".*<title id="x-title">.+<desc id="x-desc">.+/);
    expect(svg).toContain('currentColor');
    expect(svg).not.toContain('style=');
    expect([...svg.matchAll(/font-size="(\d+)"/g)].every(([, size]) => Number(size) >= 16)).toBe(true);
  }
});

describe('depths that were read', () => {
  const rows = 'station,left,right\n0+00,1,1\n0+25,1,3\n0+50,1,1\n12 ft wide';
  const reply = ask({ question: rows });
  const svg = drawing(reply);

  test('every station with its deepest reading, where it was read, and in words', () => {
    expect(data(svg, 'at')).toEqual([0, 25, 50]);
    expect(data(svg, 'deepest')).toEqual([1, 3, 1]);
    for (const words of ['0+25: 3 in', 'average across', 'fill up to here first: 1 in is left', '>0+50<'])
      expect(svg).toContain(words);
  });

  test('as deep as it was read: the lowest point hangs three times as far as the others', () => {
    const ends = [
      ...svg.matchAll(/data-deepest="[\d.]+"><line x1="([\d.]+)" y1="([\d.]+)" x2="[\d.]+" y2="([\d.]+)"/g),
    ];
    const [first, lowest, last] = ends.map(([, , from, to]) => Number(to) - Number(from));
    expect(lowest! / first!).toBeCloseTo(3, 1);
    expect(last).toBe(first);
    const places = ends.map(([, x]) => Number(x));
    expect(places[1]! - places[0]!).toBeCloseTo(places[2]! - places[1]!, 1);
  });

  test('labels of many stations stand apart', () => {
    const many = Array.from({ length: 60 }, (_, i) => `${i * 25},${1 + (i % 3)}`).join('\n');
    const long = drawing(ask({ question: `station,depth\n${many}\n12 ft wide` }));
    expect(data(long, 'at')).toHaveLength(60);
    const names = [...long.matchAll(/<tspan/g)].length;
    expect(names).toBeGreaterThan(4);
    expect(names).toBeLessThan(30);
  });
});
