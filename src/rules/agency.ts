import { convert } from '../calc/quantity.ts';
import { isUnit, type Unit, unitRow } from '../calc/units.ts';
import type { Knowledge, Records } from './knowledge.ts';
import { nearest } from './nearest.ts';
import { type ChoiceTable, type Figure, isQuantity, type LimitRecord, type QuantityRecord, type Source, type Sources } from './shapes.ts';

/** An agency's own rules, read and found to fit the records they are laid over. */
export interface Agency {
  readonly name: string;
  readonly source: string;
  readonly date?: string;
  readonly defaults: ReadonlyMap<string, Figure>;
  readonly limits: ReadonlyMap<string, { readonly min?: Figure; readonly max?: Figure }>;
  readonly tables: ReadonlyMap<string, ReadonlyMap<string, readonly number[]>>;
}

/** What is wrong with an agency's file: the place as a path, and what to do. */
export class AgencyFault extends Error {
  readonly place: string;
  constructor(place: string, text: string) {
    super(text);
    this.place = place;
  }
}

type Shelf = Pick<Knowledge, 'quantities' | 'limits' | 'tables'>;

/** Reads an agency's rules. Throws AgencyFault, with the place and the nearest right name, at the first thing that does not fit. */
export function readAgency(sent: unknown, shelf: Shelf): Agency {
  const file = object(sent, '');
  const known = ['name', 'source', 'date', 'defaults', 'limits', 'tables'];
  for (const key of Object.keys(file)) if (!known.includes(key)) throw new AgencyFault(key, unknownName(key, known));
  const text = (key: string): string => {
    const value = file[key];
    if (typeof value !== 'string' || value.trim() === '' || value.length > 200) throw new AgencyFault(key, `${key} must be a line of text, 200 characters at most`);
    return value;
  };
  return {
    name: text('name'),
    source: text('source'),
    ...(file['date'] === undefined ? {} : { date: text('date') }),
    defaults: new Map(entries(file['defaults'], 'defaults').map(([id, value, place]) => [id, defaultFigure(id, value, place, shelf)])),
    limits: new Map(entries(file['limits'], 'limits').map(([id, value, place]) => [id, bounds(id, value, place, shelf)])),
    tables: new Map(entries(file['tables'], 'tables').map(([id, value, place]) => [id, rows(id, value, place, shelf)])),
  };
}

function defaultFigure(id: string, value: unknown, place: string, { quantities }: Shelf): Figure {
  const record = quantities.get(id);
  if (!record) throw new AgencyFault(place, unknownName(id, [...quantities.keys()]));
  return figure(value, record, place);
}

function bounds(id: string, value: unknown, place: string, { limits }: Shelf): { min?: Figure; max?: Figure } {
  const rule = limits.get(id);
  if (!rule) throw new AgencyFault(place, unknownName(id, [...limits.keys()]));
  const found: { min?: Figure; max?: Figure } = {};
  for (const [end, sent, where] of entries(value, place)) {
    if (end !== 'min' && end !== 'max') throw new AgencyFault(where, unknownName(end, ['min', 'max']));
    if (!rule[end] && !rule.cases) throw new AgencyFault(where, `${id} has no ${end}: give its ${end === 'min' ? 'max' : 'min'}`);
    found[end] = figure(sent, rule.on, where);
  }
  return found;
}

function rows(id: string, value: unknown, place: string, { tables }: Shelf): ReadonlyMap<string, readonly number[]> {
  const table = tables.get(id);
  if (table?.kind !== 'choice-table') throw new AgencyFault(place, unknownName(id, [...tables.values()].filter(({ kind }) => kind === 'choice-table').map((each) => each.id)));
  if (!Array.isArray(value)) throw new AgencyFault(place, 'a table is a list of rows');
  return new Map(value.map((row, i) => tableRow(object(row, `${place}[${i}]`), `${place}[${i}]`, table)));
}

function tableRow(row: Record<string, unknown>, place: string, { by, columns, rows: printed }: ChoiceTable): [string, number[]] {
  const option = row[by.id];
  if (typeof option !== 'string' || !Object.hasOwn(printed, option)) throw new AgencyFault(`${place}.${by.id}`, unknownName(String(option), Object.keys(printed)));
  const unit = row['unit'];
  const figures = columns.map(({ name, finds, unit: own }) => {
    const { number, unit: said } = figure({ number: row[name], unit }, finds, `${place}.${name}`);
    return convert(number, said, own);
  });
  return [option, figures];
}

function figure(value: unknown, record: QuantityRecord, place: string): Figure {
  const { number, unit } = object(value, place);
  if (typeof number !== 'number' || !Number.isFinite(number)) throw new AgencyFault(`${place}.number`, 'number must be a number');
  if (typeof unit !== 'string' || !isUnit(unit)) throw new AgencyFault(`${place}.unit`, unknownName(String(unit), Object.values(record.units)));
  const { dimension } = unitRow(unit);
  if (dimension !== record.dimension) throw new AgencyFault(`${place}.unit`, `${record.id} is a ${record.dimension}, as in ${record.units.us}; ${unit} is a ${dimension}`);
  if (record.plausible && !plausible(number, unit, record)) throw new AgencyFault(`${place}.number`, `${number} ${unit} is outside what ${record.id} can be`);
  return { number, unit } as Figure;
}

function plausible(number: number, unit: Unit, { plausible: ends }: QuantityRecord): boolean {
  return number >= convert(ends!.min.number, ends!.min.unit, unit) && number <= convert(ends!.max.number, ends!.max.unit, unit);
}

function object(value: unknown, place: string): Record<string, unknown> {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Record<string, unknown>;
  throw new AgencyFault(place, `${place || 'the file'} must be an object`);
}

function entries(value: unknown, place: string): [string, unknown, string][] {
  return value === undefined ? [] : Object.entries(object(value, place)).map(([key, each]) => [key, each, `${place}.${key}`]);
}

function unknownName(name: string, known: readonly string[]): string {
  const other = nearest(name, known);
  return `there is no ${name} here${other ? `; did you mean ${other}?` : ''}`;
}

/** Lays an agency's rules over records: its figures stand in their place, its source before theirs, the general figure kept beside. */
export function overlay(records: Records, agency: Agency): Records {
  const source: Source = { document: agency.source, issuer: agency.name, ...(agency.date ? { edition: agency.date } : {}), seen: 'read' };
  const before = (sources: Sources): Sources => [source, ...sources];
  const figures = new Map(agency.defaults);
  for (const [id, { min, max }] of agency.limits) {
    const rule = records.limits.find((each) => each.id === id)!;
    for (const [bound, own] of [[rule.min, min], [rule.max, max]] as const) if (bound && own && isQuantity(bound)) figures.set(bound.id, own);
  }
  const quantities = new Map(records.quantities.map((record) => [record.id, record]));
  for (const [id, own] of figures) {
    const record = quantities.get(id)!;
    quantities.set(id, { ...record, default: own, sources: before(record.sources), agency: { name: agency.name, ...(record.default ? { general: record.default } : {}) } });
  }
  return {
    ...records,
    quantities: [...quantities.values()],
    limits: records.limits.map((rule) => limitOf(rule, agency, before)),
    tables: records.tables.map((table) => {
      const own = agency.tables.get(table.id);
      return own && table.kind === 'choice-table' ? { ...table, rows: { ...table.rows, ...Object.fromEntries(own) }, sources: before(table.sources), agency: { name: agency.name } } : table;
    }),
  };
}

function limitOf(rule: LimitRecord, { limits, name }: Agency, before: (sources: Sources) => Sources): LimitRecord {
  const own = limits.get(rule.id);
  if (!own) return rule;
  const { cases, ...plain } = rule;
  if (cases) return { ...plain, ...own, sources: before(rule.sources), agency: { name, general: rule } };
  const bound = (end: 'min' | 'max') => (rule[end] && own[end] && !isQuantity(rule[end]) ? { [end]: own[end] } : {});
  return { ...rule, ...bound('min'), ...bound('max'), sources: before(rule.sources), agency: { name, general: rule } };
}
