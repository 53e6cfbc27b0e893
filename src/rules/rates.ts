import { isUnit, type Unit } from '../calc/units.ts';
import { agencyWords } from './agency-words.ts';
import { FileFault, line, object, only } from './file-parts.ts';
import { ratesWords as words } from './rates-words.ts';

/** A published schedule of what machines cost an hour, as its file says it. */
export interface Rates {
  readonly name: string;
  readonly year: number;
  readonly source: string;
  /** How the rows were seen by whoever wrote the file. */
  readonly seen: string;
  /** What the schedule says of all its rates. */
  readonly note?: string;
  readonly rows: readonly RateRow[];
}

export interface RateRow {
  readonly code: string;
  /** What it is: the last word is the kind of machine, those before it tell one kind from another. */
  readonly machine: string;
  readonly size?: { readonly number: number; readonly unit: Unit };
  /** The most power that the row holds for, in horsepower. */
  readonly horsepower?: number;
  readonly rate: number;
  /** Undefined where the schedule prints none: such a rate is never added up. */
  readonly unit?: 'USD/h';
  readonly note?: string;
}

const mostRows = 1000;
const codeShape = /^[A-Za-z0-9][A-Za-z0-9.-]{0,11}$/;
const machineShape = /^[A-Za-z0-9][A-Za-z0-9 -]{0,59}$/;
const plausible = { min: 0.01, max: 5000 };

/** Reads a file of rates. Throws FileFault, with the place and what to do, at the first thing that does not fit. */
export function readRates(sent: unknown): Rates {
  const file = object(sent, '', agencyWords.mustBeObject(agencyWords.theFile));
  only(file, ['name', 'year', 'source', 'seen', 'note', 'rates'], '');
  const { year, rates } = file;
  const head = { name: line(file, 'name'), source: line(file, 'source'), seen: line(file, 'seen') };
  if (typeof year !== 'number' || !Number.isInteger(year) || year < 1950 || year > 2100)
    throw new FileFault('year', words.mustBeYear);
  if (!Array.isArray(rates) || rates.length === 0 || rates.length > mostRows)
    throw new FileFault('rates', words.mustBeRows(mostRows));
  const places = new Map<string, string>();
  const rows = rates.map((row: unknown, i) => {
    const place = `rates[${i}]`;
    const read = rowOf(object(row, place), place);
    const before = places.get(read.code);
    if (before) throw new FileFault(`${place}.code`, words.twice(read.code, before));
    places.set(read.code, place);
    return read;
  });
  return { ...head, year, ...(file.note === undefined ? {} : { note: line(file, 'note') }), rows };
}

function rowOf(row: Record<string, unknown>, place: string): RateRow {
  only(row, ['code', 'machine', 'size', 'horsepower', 'rate', 'unit', 'note'], place);
  const { code, machine, horsepower, rate, unit } = row;
  if (typeof code !== 'string' || !codeShape.test(code)) throw new FileFault(`${place}.code`, words.mustBeCode);
  if (typeof machine !== 'string' || !machineShape.test(machine))
    throw new FileFault(`${place}.machine`, words.mustBeMachine);
  if (horsepower !== undefined && !isAbove(horsepower)) throw new FileFault(`${place}.horsepower`, words.mustBePower);
  if (!isAbove(rate)) throw new FileFault(`${place}.rate`, agencyWords.mustBeNumber('rate'));
  if (rate < plausible.min || rate > plausible.max) throw new FileFault(`${place}.rate`, words.implausible(rate));
  if (unit !== 'USD/h' && unit !== '') throw new FileFault(`${place}.unit`, words.mustBeUnit);
  return {
    code,
    machine: machine.toLowerCase(),
    ...(row.size === undefined ? {} : { size: sizeOf(row.size, `${place}.size`) }),
    ...(horsepower === undefined ? {} : { horsepower }),
    rate,
    ...(unit ? { unit } : {}),
    ...(row.note === undefined ? {} : { note: line(row, 'note', `${place}.note`) }),
  };
}

function sizeOf(value: unknown, place: string): NonNullable<RateRow['size']> {
  const size = object(value, place, agencyWords.mustBeFigure('ft'));
  only(size, ['number', 'unit'], place);
  const { number, unit } = size;
  if (!isAbove(number)) throw new FileFault(`${place}.number`, agencyWords.mustBeNumber('number'));
  if (typeof unit !== 'string' || !isUnit(unit)) throw new FileFault(`${place}.unit`, words.mustBeSize);
  return { number, unit };
}

const isAbove = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value) && value > 0;
