import { averageEndArea, bySimpson, byTrapezoids } from '../readings.ts';

/** Depths across the road at one place; lengths in one unit all through, say inches. */
export interface Section {
  /** Distance along the road. */
  readonly at: number;
  /** Where across each depth was read, from the left edge, rising. */
  readonly offsets: readonly number[];
  readonly depths: readonly number[];
  readonly width: number;
}

/** Where n readings stand that run evenly from edge to edge; a single one stands for the whole width. */
export const evenOffsets = (count: number, width: number): number[] =>
  count === 1 ? [width / 2] : Array.from({ length: count }, (_, i) => (i * width) / (count - 1));

/** Area under readings at places of their own: trapezoids between neighbours. */
export function betweenPlaces(places: readonly number[], readings: readonly number[]): number {
  let sum = 0;
  for (let i = 1; i < places.length; i++)
    sum += byTrapezoids(places[i]! - places[i - 1]!, [readings[i - 1]!, readings[i]!]);
  return sum;
}

/** Area of a section by trapezoids; from the outermost readings to the edges their depth goes on. */
export function sectionByTrapezoids({ offsets, depths, width }: Section): number {
  const edges = offsets[0]! * depths[0]! + (width - offsets.at(-1)!) * depths.at(-1)!;
  return edges + betweenPlaces(offsets, depths);
}

/** The same by Simpson's rule. Undefined unless an odd number of readings, three or more, runs evenly from edge to edge. */
export function sectionBySimpson({ offsets, depths, width }: Section): number | undefined {
  if (depths.length < 3 || !isOddAndEven(offsets) || !isNear(offsets[0]!, 0) || !isNear(offsets.at(-1)!, width))
    return undefined;
  return bySimpson(width / (depths.length - 1), depths);
}

/** Volume between sections by average end areas, each section by trapezoids. Throws RangeError for fewer than two. */
export function volumeByTrapezoids(sections: readonly Section[]): number {
  if (sections.length < 2) throw new RangeError('a volume between sections needs at least two of them');
  const areas = sections.map(sectionByTrapezoids);
  let sum = 0;
  for (let i = 1; i < sections.length; i++)
    sum += averageEndArea(sections[i]!.at - sections[i - 1]!.at, [areas[i - 1]!, areas[i]!]);
  return sum;
}

/** The same by Simpson's rule along the road, and across it where that can be. Undefined unless an odd number of sections stands at equal steps. */
export function volumeBySimpson(sections: readonly Section[]): number | undefined {
  const places = sections.map(({ at }) => at);
  if (sections.length < 3 || !isOddAndEven(places)) return undefined;
  const areas = sections.map((section) => sectionBySimpson(section) ?? sectionByTrapezoids(section));
  return bySimpson((places.at(-1)! - places[0]!) / (places.length - 1), areas);
}

function isOddAndEven(places: readonly number[]): boolean {
  const step = (places.at(-1)! - places[0]!) / (places.length - 1);
  return places.length % 2 === 1 && places.every((at, i) => isNear(at, places[0]! + i * step));
}

/** Within a thousandth of an inch on any road: no tape reads closer. */
const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 1e-3;

/** The same sections with only what lies deeper than a level below the finished surface: the lows. */
export const below = (sections: readonly Section[], level: number): Section[] =>
  sections.map((section) => ({ ...section, depths: section.depths.map((depth) => Math.max(0, depth - level)) }));
