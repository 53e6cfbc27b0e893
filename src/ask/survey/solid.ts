import { fromBase, toBase } from '../../calc/quantity.ts';
import {
  evenOffsets,
  type Section,
  sectionBySimpson,
  sectionByTrapezoids,
  volumeBySimpson,
  volumeByTrapezoids,
} from '../../calc/survey/profile.ts';
import type { JobSurvey } from './shape.ts';

/** What the conversation knows beside the readings, in base units. */
export interface Frame {
  readonly width?: number | undefined;
  readonly length?: number | undefined;
  readonly spacing?: number | undefined;
}

/** Readings as sections of a patch, in base units, and the figures of the patch that come of them. */
export interface Solid {
  readonly sections: readonly Section[];
  readonly width: number;
  /** None for a single section across the road. */
  readonly length?: number;
  readonly average: number;
  readonly deepest: number;
  /** Where the deepest is: section and reading. */
  readonly deepestAt: readonly [section: number, reading: number];
  /** Readings above the finished surface: high spots, which take no mix. */
  readonly high: number;
}

/** What must be known before the readings can be worked. */
export type Lack = 'patch-width' | 'reading-spacing';

/** Puts readings in place. Gives what is lacking where they cannot be placed yet. */
export function solidOf(survey: JobSurvey, frame: Frame): Solid | Lack {
  const along = (number: number): number => toBase(number, survey.units.along);
  const depth = (number: number): number => toBase(number, survey.units.depth);
  const count = survey.rows[0]!.readings.length;
  const width = frame.width ?? widthOf(survey, frame.spacing);
  if (width === undefined && !survey.rows.every((row) => row.width !== undefined)) return 'patch-width';
  const places = placesOf(survey, frame);
  if (!places) return 'reading-spacing';
  const sections = survey.rows.map((row, i): Section => {
    const own = row.width === undefined ? width! : along(row.width);
    const offsets = survey.offsets?.map(along) ?? evenOffsets(count, own);
    return { at: places[i]!, width: own, offsets, depths: row.readings.map((reading) => Math.max(0, depth(reading))) };
  });
  const high = survey.rows.flatMap(({ readings }) => readings).filter((reading) => reading < 0).length;
  const deepest = Math.max(...sections.flatMap(({ depths }) => depths));
  const at = sections.findIndex(({ depths }) => depths.includes(deepest));
  const deepestAt = [at, sections[at]!.depths.indexOf(deepest)] as const;
  if (sections.length === 1) {
    const [only] = sections as [Section];
    return { sections, width: only.width, average: sectionByTrapezoids(only) / only.width, deepest, deepestAt, high };
  }
  const length = places.at(-1)! - places[0]!;
  const area = volumeByTrapezoids(sections.map((section) => ({ ...section, offsets: [0], depths: [1] })));
  return {
    sections,
    width: area / length,
    length,
    average: volumeByTrapezoids(sections) / area,
    deepest,
    deepestAt,
    high,
  };
}

/** Readings told with their places begin at the left edge or are all there is to go by: one at each end gives the width. */
function widthOf({ offsets, units, across, rows }: JobSurvey, spacing: number | undefined): number | undefined {
  if (offsets && offsets[0] === 0) return toBase(offsets.at(-1)!, units.along);
  return across && spacing !== undefined ? spacing * (rows[0]!.readings.length - 1) : undefined;
}

function placesOf({ rows, units, across }: JobSurvey, { spacing, length }: Frame): number[] | undefined {
  if (rows.every(({ at }) => at !== undefined)) return rows.map(({ at }) => toBase(at!, units.along));
  if (across || rows.length === 1) return [0];
  const step = spacing ?? (length === undefined ? undefined : length / (rows.length - 1));
  return step === undefined ? undefined : rows.map((_, i) => i * step);
}

/** A section's mean depth across its width. */
export const averageOf = (section: Section): number => sectionByTrapezoids(section) / section.width;

/** A length in a unit, without float dust. */
export const inUnitOf = (base: number, unit: 'ft' | 'm' | 'in' | 'mm'): number =>
  Number(fromBase(base, unit).toPrecision(15));

/** Volume by Simpson's rule: along the road, or for one section across it over the length of the patch. */
export function simpsonOf(solid: Solid, length: number | undefined): number | undefined {
  if (solid.sections.length > 1) return volumeBySimpson(solid.sections);
  const area = sectionBySimpson(solid.sections[0]!);
  return area === undefined || length === undefined ? undefined : area * length;
}
