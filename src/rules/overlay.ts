import { constant, type Expression, larger, lookup, smaller } from '../calc/expression.ts';
import { toBase } from '../calc/quantity.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import type { Agency, Bounds, OwnRow } from './agency.ts';
import type { Records } from './knowledge.ts';
import {
  type ChoiceTable,
  type Figure,
  isQuantity,
  type LimitRecord,
  type QuantityRecord,
  type RelationRecord,
  type Source,
  type Sources,
  type TableRecord,
} from './shapes.ts';

const ends = ['min', 'max'] as const;

/** Lays an agency's rules over records: its figures stand in their place, its source before theirs, the general figure kept beside. */
export function overlay(records: Records, agency: Agency): Records {
  return {
    ...records,
    quantities: records.quantities.map((record) => quantityOf(record, records.limits, agency)),
    limits: records.limits.map((rule) => limitOf(rule, records.limits, agency)),
    relations: [
      ...records.relations.map((relation) => relationOf(relation, records.limits, agency)),
      ...records.tables.flatMap((table) => ownRelations(table, agency)),
    ],
    tables: records.tables.map((table) => withoutOwnRows(table, agency)),
  };
}

const sourceOf = ({ name, source, date }: Agency): Source => ({
  document: source,
  issuer: name,
  ...(date ? { edition: date } : {}),
  seen: 'read',
});

const before = (sources: Sources, agency: Agency): Sources => [sourceOf(agency), ...sources];

/**
 * The bounds an agency gives for a limit that are the quantity the limit is held against: a default that other limits do
 * not bear the name of, or what has the limit's own name. Others are bounds of that limit alone.
 */
function drives(rule: LimitRecord, bound: QuantityRecord, limits: readonly LimitRecord[]): boolean {
  return bound.id === rule.id || (bound.default !== undefined && !limits.some(({ id }) => id === bound.id));
}

/** What an agency's limits make of a quantity: its least, its most. */
function bounding(quantity: QuantityRecord, limits: readonly LimitRecord[], agency: Agency): Bounds {
  const found: { min?: Figure; max?: Figure } = {};
  for (const rule of limits) {
    const own = agency.limits.get(rule.id);
    for (const end of ends) {
      const bound = rule[end];
      if (own?.[end] && bound && isQuantity(bound) && bound.id === quantity.id && drives(rule, bound, limits))
        found[end] = own[end];
    }
  }
  return found;
}

/** With an agency's default, or with its bound where the general one is a default. */
function quantityOf(record: QuantityRecord, limits: readonly LimitRecord[], agency: Agency): QuantityRecord {
  const { min, max } = bounding(record, limits, agency);
  const own = agency.defaults.get(record.id) ?? (record.default && (max ?? min));
  if (!own) return record;
  const { defaultWhen, default: general, ...rest } = record;
  // Where the general records take nothing, an agency's one figure is not taken either.
  const none = defaultWhen?.filter(({ figure }) => !figure) ?? [];
  return {
    ...rest,
    ...(none.length > 0 ? { defaultWhen: none } : {}),
    default: { ...own, ...(general?.last ? { last: true } : {}) },
    sources: before(record.sources, agency),
    agency: {
      name: agency.name,
      ...(general ? { general } : {}),
      ...(defaultWhen ? { when: defaultWhen } : {}),
    },
  };
}

/** Held to an agency's bound where it finds the quantity of that bound: the safer of the two figures is worked with. */
function relationOf(relation: RelationRecord, limits: readonly LimitRecord[], agency: Agency): RelationRecord {
  if (relation.finds.default) return relation;
  const { min, max } = bounding(relation.finds, limits, agency);
  if (!min && !max) return relation;
  const floor = min ? larger(relation.by, constant(min.number, min.unit)) : relation.by;
  const by = max ? smaller(floor, constant(max.number, max.unit)) : floor;
  return {
    ...relation,
    by,
    sources: before(relation.sources, agency),
    agency: { name: agency.name, general: relation.by },
  };
}

function limitOf(rule: LimitRecord, limits: readonly LimitRecord[], agency: Agency): LimitRecord {
  const own = agency.limits.get(rule.id);
  if (!own) return rule;
  const bounds: { min?: Figure; max?: Figure } = {};
  for (const end of ends) {
    const bound = rule[end];
    const byDefault = bound && isQuantity(bound) && bound.default && drives(rule, bound, limits);
    if (own[end] && !byDefault) bounds[end] = own[end];
  }
  const { cases, ...plain } = rule;
  const left = cases?.some((each) => ends.some((end) => each[end] && !own[end]));
  return {
    ...plain,
    // One bound for all cases; where they have another as well, each keeps that one.
    ...(left ? { cases: cases!.map((each) => ({ ...each, ...bounds })) } : bounds),
    sources: before(rule.sources, agency),
    agency: { name: agency.name, ends: ends.filter((end) => own[end]), general: rule },
  };
}

function withoutOwnRows(table: TableRecord, agency: Agency): TableRecord {
  const own = agency.tables.get(table.id);
  if (!own || table.kind !== 'choice-table') return table;
  const rows = Object.fromEntries(Object.entries(table.rows).filter(([option]) => !own.has(option)));
  return { ...table, rows, agency: { name: agency.name } };
}

/** The relations that an agency's rows stand for, one a figure, under the names of those they replace. */
function ownRelations(table: TableRecord, agency: Agency): RelationRecord[] {
  const own = agency.tables.get(table.id);
  if (!own || table.kind !== 'choice-table') return [];
  return [...own].flatMap(([option, rows]) => rowRelations(table, option, rows, agency));
}

function rowRelations(table: ChoiceTable, option: string, rows: readonly OwnRow[], agency: Agency): RelationRecord[] {
  const sources = before(table.sources, agency);
  return table.columns.map(({ name, finds, unit }, i): RelationRecord => {
    const id = `${table.id}-${name}-${option}`;
    const first = rows[0]!.figures[i]!;
    const given = { [table.by.id]: option, ...firstKey(rows) };
    return {
      kind: 'relation',
      id,
      title: table.title,
      finds,
      by: rows[0]!.upTo ? stepwise(id, rows, i, unit) : constant(first, unit),
      when: [{ choice: table.by, is: [option] }],
      because: table.because,
      sources,
      agency: { name: agency.name, general: constant(table.rows[option]![i]!, unit) },
      examples: [{ given, finds: [first, unit], source: agency.source }],
    };
  });
}

const firstKey = ([row]: readonly OwnRow[]): Record<string, readonly [number, Unit]> =>
  row?.upTo ? { [row.upTo.of.id]: [row.upTo.max.number, row.upTo.max.unit] } : {};

/** Rows that hold up to a figure each, the last perhaps without an end. */
function stepwise(id: string, rows: readonly OwnRow[], column: number, unit: Unit): Expression {
  const { of } = rows[0]!.upTo!;
  return lookup(of, {
    id,
    key: of.dimension,
    value: unitRow(unit).dimension,
    rows: rows.map(({ upTo, figures }) => [
      upTo ? toBase(upTo.max.number, upTo.max.unit) : Number.MAX_VALUE,
      toBase(figures[column]!, unit),
    ]),
  });
}
