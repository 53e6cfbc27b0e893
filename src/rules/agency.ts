import { compare, convert, toBase } from '../calc/quantity.ts';
import { isUnit, type Unit, unitRow } from '../calc/units.ts';
import { agencyWords as words } from './agency-words.ts';
import { FileFault, line, object, only, short, unknownName } from './file-parts.ts';
import type { Knowledge } from './knowledge.ts';
import type { ChoiceTable, Figure, QuantityRecord } from './shapes.ts';

/** An agency's own rules, read and found to fit the records they are laid over. */
export interface Agency {
  readonly name: string;
  readonly source: string;
  readonly date?: string;
  readonly defaults: ReadonlyMap<string, Figure>;
  readonly limits: ReadonlyMap<string, Bounds>;
  /** Rows of its own by table and option. */
  readonly tables: ReadonlyMap<string, ReadonlyMap<string, readonly OwnRow[]>>;
}

export interface Bounds {
  readonly min?: Figure;
  readonly max?: Figure;
}

/** Figures in the units of the table's columns. With `upTo` they hold while that quantity is at most this, in rising rows. */
export interface OwnRow {
  readonly figures: readonly number[];
  readonly upTo?: { readonly of: QuantityRecord; readonly max: Figure };
}

type Shelf = Pick<Knowledge, 'quantities' | 'limits' | 'tables' | 'relations'>;
type Entry = readonly [key: string, value: unknown, place: string];

/** Reads an agency's rules. Throws FileFault, with the place and the nearest right name, at the first thing that does not fit. */
export function readAgency(sent: unknown, shelf: Shelf): Agency {
  const file = object(sent, '');
  only(file, ['name', 'source', 'date', 'defaults', 'limits', 'tables'], '');
  const part = <T>(key: string, read: (entry: Entry, shelf: Shelf) => T): Map<string, T> =>
    new Map(
      file[key] === undefined ? [] : entriesOf(file[key], key).map((entry) => [entry[0], read(entry, shelf)] as const),
    );
  return {
    name: line(file, 'name'),
    source: line(file, 'source'),
    ...(file.date === undefined ? {} : { date: line(file, 'date') }),
    defaults: part('defaults', defaultFigure),
    limits: part('limits', boundsOf),
    tables: part('tables', rowsOf),
  };
}

/** A default must be one that can be used: a figure that a rule always works out would stand in the general rule's shadow. */
function defaultFigure([id, value, place]: Entry, { quantities, relations }: Shelf): Figure {
  const record = named(id, quantities, place);
  const rule = [...relations.values()].some(({ finds, bothWays }) => finds.id === id && bothWays === false);
  const tabled = [...relations.values()].some(({ finds, by }) => finds.id === id && by.op === 'constant');
  if (!record.default && (rule || tabled)) throw new FileFault(place, words.workedOut(id));
  return figureOf(value, record, place);
}

function boundsOf([id, value, place]: Entry, { limits }: Shelf): Bounds {
  const rule = named(id, limits, place);
  const sent = object(value, place);
  only(sent, ['min', 'max'], place);
  const ends = (['min', 'max'] as const).filter((end) => sent[end] !== undefined);
  if (ends.length === 0) throw new FileFault(place, words.noBound(id));
  const found: { min?: Figure; max?: Figure } = {};
  for (const end of ends) {
    const has = [rule, ...(rule.cases ?? [])].some((each) => each[end]);
    if (!has) throw new FileFault(`${place}.${end}`, words.noSuchEnd(id, end, end === 'min' ? 'max' : 'min'));
    found[end] = figureOf(sent[end], rule.on, `${place}.${end}`);
  }
  if (found.min && found.max && above(found.min, found.max))
    throw new FileFault(place, words.crossed(inShort(found.min), inShort(found.max)));
  return found;
}

function rowsOf([id, value, place]: Entry, { tables, quantities }: Shelf): ReadonlyMap<string, readonly OwnRow[]> {
  const table = tables.get(id);
  if (table?.kind !== 'choice-table') {
    const byChoice = [...tables.values()].filter(({ kind }) => kind === 'choice-table').map((each) => each.id);
    throw new FileFault(place, unknownName(id, byChoice));
  }
  if (!Array.isArray(value)) throw new FileFault(place, words.mustBeRows);
  const found = new Map<string, OwnRow[]>();
  value.forEach((sent, i) => {
    const at = `${place}[${i}]`;
    const [option, row] = rowOf(object(sent, at), at, table, quantities);
    const before = found.get(option) ?? [];
    checkRise(option, before.at(-1), row, at);
    found.set(option, [...before, row]);
  });
  return found;
}

function rowOf(
  row: Record<string, unknown>,
  place: string,
  { by, columns, rows }: ChoiceTable,
  quantities: Shelf['quantities'],
): [string, OwnRow] {
  const option = row[by.id];
  if (typeof option !== 'string' || !Object.hasOwn(rows, option))
    throw new FileFault(
      `${place}.${by.id}`,
      typeof option === 'string' ? unknownName(option, Object.keys(rows)) : words.mustBeOneOf(by.id, Object.keys(rows)),
    );
  const own = [by.id, 'unit', ...columns.map(({ name }) => name)];
  const others = Object.keys(row).filter((key) => !own.includes(key));
  const [key] = others;
  const stray = others.find((other) => other !== key || !quantities.has(other));
  if (stray !== undefined) throw new FileFault(`${place}.${short(stray)}`, unknownName(stray, own));
  const figures = columns.map(({ name, finds, unit }) => {
    const said = figureOf({ number: row[name], unit: row.unit }, finds, place, name);
    return convert(said.number, said.unit, unit);
  });
  return [option, { figures, ...(key === undefined ? {} : { upTo: upToOf(row[key], key, place, quantities) }) }];
}

function upToOf(
  value: unknown,
  key: string,
  place: string,
  quantities: Shelf['quantities'],
): NonNullable<OwnRow['upTo']> {
  const of = quantities.get(key)!;
  const sent = object(value, `${place}.${key}`);
  only(sent, ['max'], `${place}.${key}`);
  return { of, max: figureOf(sent.max, of, `${place}.${key}.max`) };
}

function checkRise(option: string, before: OwnRow | undefined, row: OwnRow, place: string): void {
  if (!before) return;
  if (!before.upTo && !row.upTo) throw new FileFault(place, words.twice(option));
  const rises =
    before.upTo && (!row.upTo || (row.upTo.of.id === before.upTo.of.id && above(row.upTo.max, before.upTo.max)));
  if (!rises) throw new FileFault(place, words.risingRows(option));
}

/** A figure with its unit, that can be what the record is. `key` names the number where it is not called that. */
function figureOf(value: unknown, record: QuantityRecord, place: string, key = 'number'): Figure {
  const sent = object(value, place, words.mustBeFigure(record.units.us));
  only(sent, ['number', 'unit'], place);
  const { number, unit } = sent;
  if (typeof number !== 'number' || !Number.isFinite(number))
    throw new FileFault(`${place}.${key}`, words.mustBeNumber(key));
  if (typeof unit !== 'string') throw new FileFault(`${place}.unit`, words.mustBeFigure(record.units.us));
  if (!isUnit(unit)) throw new FileFault(`${place}.unit`, unknownName(unit, unitsOf(record)));
  const { dimension } = unitRow(unit);
  if (dimension !== record.dimension)
    throw new FileFault(
      `${place}.unit`,
      words.otherDimension(record.id, record.dimension, unitsOf(record), unit, dimension),
    );
  if (!plausible(number, unit, record))
    throw new FileFault(`${place}.${key}`, words.implausible(`${number} ${unit}`, record.id));
  return { number, unit };
}

const unitsOf = ({ units }: QuantityRecord): string[] => [...new Set([units.us, units.metric])];

function plausible(number: number, unit: Unit, { plausible: ends, dimension }: QuantityRecord): boolean {
  const within = (end: Figure, side: 1 | -1): boolean =>
    compare(toBase(number, unit), toBase(end.number, end.unit)) * side >= 0;
  return ends ? within(ends.min, 1) && within(ends.max, -1) : number > 0 || dimension === 'temperature';
}

const above = (a: Figure, b: Figure): boolean => compare(toBase(a.number, a.unit), toBase(b.number, b.unit)) > 0;

const inShort = ({ number, unit }: Figure): string => `${number} ${unit}`;

const entriesOf = (value: unknown, place: string): Entry[] =>
  Object.entries(object(value, place)).map(([key, each]) => [key, each, `${place}.${short(key)}`]);

function named<R>(id: string, shelf: ReadonlyMap<string, R>, place: string): R {
  const record = shelf.get(id);
  if (!record) throw new FileFault(place, unknownName(id, [...shelf.keys()]));
  return record;
}
