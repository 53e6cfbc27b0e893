import { constant } from '../calc/expression.ts';
import { of } from '../calc/quantity.ts';
import { type Method, methodOf, methodsOf, type RelationShape, type Way } from '../calc/relation.ts';
import { type Known, type Network, network } from '../calc/solve.ts';
import { choices, limits, practices, quantities, relations, tables } from './index.generated.ts';
import { type LaidKnowledge, laid } from './laid.ts';
import type {
  ChoiceRecord,
  ChoiceTable,
  LimitRecord,
  PracticeRecord,
  QuantityRecord,
  RelationRecord,
  RuleRecord,
  TableRecord,
} from './shapes.ts';

/** The records, ready to be asked. */
export interface Knowledge {
  readonly quantities: ReadonlyMap<string, QuantityRecord>;
  readonly choices: ReadonlyMap<string, ChoiceRecord>;
  readonly relations: ReadonlyMap<string, RelationRecord>;
  readonly limits: ReadonlyMap<string, LimitRecord>;
  readonly practices: ReadonlyMap<string, PracticeRecord>;
  readonly tables: ReadonlyMap<string, TableRecord>;
  readonly network: Network;
  /** Every default, as the solver takes it. */
  readonly defaults: readonly Known[];
  /** Quantities whose default hangs on a choice. */
  readonly conditional: readonly QuantityRecord[];
  /** How hard each quantity is to come by, for what can be asked; a choice stands under the fact of each of its options. */
  readonly ease: ReadonlyMap<string, number>;
  /** The records it was made from. */
  readonly records: Records;
  /** Hash of all records: which rules answered. */
  readonly version: string;
}

export interface Records {
  readonly quantities: readonly QuantityRecord[];
  readonly choices: readonly ChoiceRecord[];
  readonly relations: readonly RelationRecord[];
  readonly limits: readonly LimitRecord[];
  readonly practices: readonly PracticeRecord[];
  readonly tables: readonly TableRecord[];
}

/** Joins records to a knowledge base; `laid` is what these very records come to, where that is at hand. Throws an Error that names the record and the fix when one does not fit. */
export function knowledgeOf(records: Records, laid?: LaidKnowledge): Knowledge {
  const relations = [...records.relations, ...records.tables.flatMap(relationsOf)];
  const byId = {
    quantities: index(records.quantities),
    choices: index(records.choices),
    relations: index(relations),
    limits: index(records.limits),
    practices: index(records.practices),
    tables: index(records.tables),
  };
  return {
    ...byId,
    network: network(
      relations.flatMap((record, at) => laid?.ways?.[at]?.map((way) => methodOf(record, way)) ?? methodsUnder(record)),
      records.quantities.filter((record) => record.counted).map((record) => record.id),
    ),
    defaults: records.quantities.flatMap(defaultOf).concat(records.choices.flatMap(defaultChoice)),
    conditional: records.quantities.filter(({ defaultWhen }) => defaultWhen),
    ease: new Map([
      ...records.quantities.flatMap((record) => (record.question ? [[record.id, record.question.ease] as const] : [])),
      ...records.choices.flatMap(easeOfOptions),
    ]),
    records,
    version: laid?.version ?? fingerprint(JSON.stringify(records, withoutExamples)),
  };
}

/** The fact that a choice has been settled one way; a relation that holds only then needs it. */
export const optionFact = (choice: string, option: string): string => `${choice}=${option}`;

function easeOfOptions({ id, options, question }: ChoiceRecord): (readonly [string, number])[] {
  return question ? options.map((option) => [optionFact(id, option.id), question.ease] as const) : [];
}

/** The relations that a table read by a choice stands for: one a figure. */
function relationsOf(record: TableRecord): RelationRecord[] {
  return record.kind === 'choice-table'
    ? Object.keys(record.rows).flatMap((option) => rowRelations(record, option))
    : [];
}

function rowRelations(record: ChoiceTable, option: string): RelationRecord[] {
  const { by, columns, rows, because, sources } = record;
  const row = rows[option]!;
  if (!by.options.some(({ id }) => id === option))
    throw new Error(`table ${record.id} has a row ${option}: no option of ${by.id}`);
  if (row.length !== columns.length)
    throw new Error(`table ${record.id}, row ${option}: give ${columns.length} figures`);
  return columns.map(({ name, finds, unit }, i) => ({
    kind: 'relation',
    id: `${record.id}-${name}-${option}`,
    title: record.title,
    finds,
    by: constant(row[i]!, unit),
    when: [{ choice: by, is: [option] }],
    because,
    sources,
    examples: [
      {
        given: { [by.id]: option },
        finds: [row[i]!, unit],
        source: `${sources[0].document}, ${sources[0].place ?? ''}`,
      },
    ],
  }));
}

/** The fact that a figure was said, not worked out; a relation that holds only then needs it. */
export const saidFact = (quantity: string): string => `${quantity} said`;

/** The title of an option; its id where no record knows it. */
export const optionTitle = (choices: ReadonlyMap<string, ChoiceRecord>, choice: string, option: string): string =>
  choices.get(choice)?.options.find(({ id }) => id === option)?.title ?? option;

/** The choice that an option settles; none for a figure. */
export const choiceOf = (fact: string): string | undefined =>
  fact.includes('=') ? fact.slice(0, fact.indexOf('=')) : undefined;

/** What can be kept of a knowledge base, for `knowledgeOf`. */
export function layKnowledge({ relations, network: { methods }, version }: Knowledge): LaidKnowledge {
  const ways = new Map([...relations.values()].map((record): [RelationShape, Way[]] => [record, []]));
  for (const { relation, finds, needs } of methods) ways.get(relation)!.push([finds, ...needs]);
  return { version, ways: [...ways.values()] };
}

/** A relation's methods, each needing the settled choices its `when` names: one set for every combination that will do. */
function methodsUnder(record: RelationRecord): Method[] {
  const kept = new Set(record.keeps?.map(({ id }) => id));
  const said = (record.said ?? []).map(({ id }) => saidFact(id));
  let methods = methodsOf(record)
    .filter(({ finds }) => !kept.has(finds))
    .map((method) => (said.length ? { ...method, needs: [...method.needs, ...said] } : method));
  for (const { choice, is } of record.when ?? []) {
    methods = is.flatMap((option) =>
      methods.map((method) => ({ ...method, needs: [...method.needs, optionFact(choice.id, option)] })),
    );
  }
  return methods;
}

const defaultOf = (record: QuantityRecord): Known[] => (record.default ? [knownOf(record.id, record.default)] : []);

/** A default as the solver takes it. */
export function knownOf(id: string, figure: NonNullable<QuantityRecord['default']>): Known {
  const base = (number: number) => of(number, figure.unit).base;
  const { number, low = number, high = number, last = false } = figure;
  return { id, value: base(number), low: base(low), high: base(high), assumed: true, last };
}

function defaultChoice(record: ChoiceRecord): Known[] {
  return record.default ? [{ id: optionFact(record.id, record.default), value: 1, assumed: true }] : [];
}

function index<R extends RuleRecord>(records: readonly R[]): Map<string, R> {
  const map = new Map<string, R>();
  for (const record of records) {
    if (map.has(record.id)) throw new Error(`two ${record.kind} records are called ${record.id}: rename one`);
    map.set(record.id, record);
  }
  return map;
}

/** Examples run a rule and are none: a phone has the same version without them. */
const withoutExamples = (key: string, value: unknown): unknown => (key === 'examples' ? undefined : value);

/** A short hash (FNV-1a, 32 bits) of a text: which version of the records this is, not a seal. */
export function fingerprint(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

/** The knowledge base as shipped. */
export const knowledge: Knowledge = knowledgeOf({ quantities, choices, relations, limits, practices, tables }, laid);

/** True for two quantities that people give in the same words, and for one and the same. */
export function isSaidLike({ quantities }: Pick<Knowledge, 'quantities'>, one: string, other: string): boolean {
  const kind = (id: string): string => quantities.get(id)?.saidLike?.id ?? id;
  return kind(one) === kind(other);
}
