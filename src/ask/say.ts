import { fromBase } from '../calc/quantity.ts';
import type { Rounding } from '../calc/rounding.ts';
import type { Unit } from '../calc/units.ts';
import { sayFigure, sayRange } from '../calc/wording.ts';
import type { QuantityRecord, Source } from '../rules/shapes.ts';
import { en } from './wording/en.ts';

/** A quantity's figure in words, rounded as its record says. `given` figures are echoed, not rounded. */
export function say(record: QuantityRecord, base: number, unit: Unit, given = false): string {
  return sayFigure(base, unit, given ? { given: true } : roundingOf(record, unit));
}

/** The two ends of a figure in words; undefined when they are one. */
export function sayEnds(
  record: QuantityRecord,
  { low, high }: { low: number; high: number },
  unit: Unit,
): string | undefined {
  return low === high ? undefined : sayRange(Math.min(low, high), Math.max(low, high), unit, roundingOf(record, unit));
}

/** A record's rounding goes with its own two units; any other unit has its usual one. */
function roundingOf({ rounding, units }: QuantityRecord, unit: Unit): { rounding?: Rounding } {
  if (!rounding || (unit !== units.us && unit !== units.metric)) return {};
  return { rounding: rounding[unit === units.us ? 'us' : 'metric'] };
}

/** A figure to stand inside a formula. */
export const sayPlain = (record: QuantityRecord, base: number, unit: Unit, given: boolean): string =>
  sayFigure(base, unit, { plain: true, ...(given ? { given } : roundingOf(record, unit)) });

/** A figure as a reply carries it: in its unit, not rounded, and in words. */
export function asValue(record: QuantityRecord, fact: { value: number; low: number; high: number }, unit: Unit) {
  const ends = fact.low === fact.high ? {} : orderEnds(fromBase(fact.low, unit), fromBase(fact.high, unit));
  return {
    quantity: record.id,
    number: tidy(fromBase(fact.value, unit)),
    unit,
    text: say(record, fact.value, unit),
    ...ends,
  };
}

const orderEnds = (a: number, b: number) => ({ low: tidy(Math.min(a, b)), high: tidy(Math.max(a, b)) });

/** Takes float dust off a number: 12 digits are more than any tape reads. */
export const tidy = (x: number): number => Number(x.toPrecision(12));

/** Sources in words: a record's own never changes. */
const sourceLines = new WeakMap<Source, string>();

/** A source as one line. */
export function saySource(source: Source): string {
  const line = sourceLines.get(source) ?? sourceLine(source);
  sourceLines.set(source, line);
  return line;
}

function sourceLine({ document, issuer, edition, place, seen }: Source): string {
  const parts = [document, edition && en.edition(edition), issuer, place].filter(Boolean).join(', ');
  return parts + en.seen[seen];
}

/** Fills `{name}` places of a sentence. A place nothing is known for is left out with the brackets round it. */
export function fill(template: string, figures: (name: string) => string | undefined): string {
  return template.replace(/\{([a-z0-9-]{1,60})\}/g, (_, name: string) => figures(name) ?? en.unsettled);
}

/** First letter in upper case, for the start of a line. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
