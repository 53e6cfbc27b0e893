import { convert } from '../calc/quantity.ts';
import type { Figure } from '../calc/read/reading.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { UnitSystem } from './reply.ts';

interface Circumstances {
  readonly system: UnitSystem;
  /** True when a word or the group gives the figure this role. */
  readonly told: boolean;
  /** True when one of its words stands before the figure. */
  readonly led?: boolean;
  /** True for a number right before a thing that is counted. */
  readonly counts?: boolean;
  /** True when the last reply asked for it. */
  readonly asked: boolean;
  /** The unit of the figure the job has of it. */
  readonly had: Unit | undefined;
  /** Units of the figures the job has. */
  readonly kept?: readonly Unit[];
  /** All figures of the sentence. */
  readonly all: readonly Figure[];
}

/** False where the unit typed leaves no doubt that it measures something else: then no more need be weighed. */
export const couldMeasure = (figure: Figure, record: QuantityRecord): boolean => {
  const { unit, unclear, form } = figure;
  return unit === undefined || unclear || form === 'ratio' || unit === 'USD' || isShort(figure, record)
    ? true
    : unitRow(unit).dimension === record.dimension;
};

/** True for a figure in the short form of a record's unit, of a size that it has: "shoot .08 gallons", "use 112 lb". */
function isShort({ unit, number }: Figure, { shortUnit, plausible }: QuantityRecord): boolean {
  if (!shortUnit || unit !== shortUnit.unit || !plausible) return false;
  const [least, most] = [plausible.min, plausible.max].map((end) => convert(end.number, end.unit, shortUnit.for));
  return number >= least! && number <= most!;
}

/** True where the unit a figure has in a role is not the one that was typed: then it is said. */
export const isUnitAssumed = ({ unit: typed }: Figure, { shortUnit }: QuantityRecord, unit: Unit): boolean =>
  unit !== '1' && (typed === undefined || typed === shortUnit?.unit);

/** The unit a figure has in a role; undefined when it cannot have that role. */
export function unitFor(figure: Figure, record: QuantityRecord, circumstances: Circumstances): Unit | undefined {
  if (figure.form === 'ratio') return ratioUnit(figure, record);
  return figure.unit === undefined ? bareUnit(record, circumstances) : typedUnit(figure, record, circumstances.system);
}

/** A bare number counts, or has the unit its role always has; where the role is told, its only one (per cent), or that of a like figure beside it ("44 tons, 31 is down"), said now or before. */
function bareUnit(
  record: QuantityRecord,
  { system, told, led, counts, asked, all, had, kept = [] }: Circumstances,
): Unit | undefined {
  if (record.dimension === 'count') return '1';
  if (had && !told) return had;
  if (record.bare) return record.bare[system];
  if (told && record.units.us === record.units.metric) return record.units.us;
  if (counts) return undefined;
  const units = told ? [...all.flatMap(({ unit }) => unit ?? []), ...kept] : [];
  const like = units.find((unit) => unitRow(unit).dimension === record.dimension);
  return like ?? (led ? record.bareTold?.[system] : undefined) ?? (asked ? record.units[system] : undefined);
}

/** The unit as typed, where it measures the quantity; one that can mean two things means what the quantity is, and money for a price means money for each. */
function typedUnit(figure: Figure, record: QuantityRecord, system: UnitSystem): Unit | undefined {
  const { unit, unclear } = figure;
  const { dimension, bare } = record;
  if (isShort(figure, record)) return record.shortUnit?.for;
  if (unclear === 'yd' && dimension === 'area') return 'yd2';
  if (unclear === 'yd' && dimension === 'volume') return 'yd3';
  if (unclear === 'deg' && dimension === 'angle') return 'deg';
  if (unit === 'USD' && bare && (dimension === 'price' || dimension === 'wage')) return bare[system];
  if (unitRow(unit!).dimension !== dimension) return undefined;
  return system === 'us' && (unclear === 't' || unclear === 'tonelada') ? (shortTon[unit!] ?? unit) : unit;
}

/** What a "t" stands in, where it is the ton of 2,000 lb. */
const shortTon: Partial<Record<Unit, Unit>> = { t: 'ton', 'USD/t': 'USD/ton', 't/h': 'ton/h' };

/** A ratio serves a record that reads parts; unlike parts of a whole could mean two things, so they serve none. */
function ratioUnit({ parts }: Figure, record: QuantityRecord): Unit | undefined {
  if (!record.parts || !parts) return undefined;
  if (record.parts === 'share') return parts[0] === parts[1] ? '%' : undefined;
  return parts[1] === 1 ? '1' : undefined;
}
