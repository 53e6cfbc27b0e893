import { inWords } from '../calc/expression.ts';
import { toBase } from '../calc/quantity.ts';
import { sayFigure } from '../calc/wording.ts';
import * as records from '../rules/index.generated.ts';
import { knowledge } from '../rules/knowledge.ts';
import { type Figure, isQuantity, type QuantityRecord } from '../rules/shapes.ts';
import { cards } from './cards.generated.ts';
import { capital, saySource } from './say.ts';
import type { Card } from './search/card.ts';
import { stem } from './search/stem.ts';
import { inTexts } from './search/text-index.ts';
import type { Voice } from './voice.ts';
import { reference as words } from './wording/reference.en.ts';

const groups = [
  records.limits,
  records.practices,
  records.tables,
  records.steps,
  records.faults,
  records.defects,
  records.repairs,
  records.choices,
  records.quantities,
  records.relations,
] as const;

/** Any record that has a page of its own. */
export type AnyRecord = (typeof groups)[number][number];

/** Every record, in the order of the rule book. */
export const everyRecord: readonly AnyRecord[] = groups.flatMap((group) => [...group] as AnyRecord[]);

const byAddress = new Map(everyRecord.map((record) => [`${record.kind}/${record.id}`, record]));

export const recordAt = (address: string): AnyRecord | undefined => byAddress.get(address);

/** Figures of a page that belongs to no job: as the records have them. */
export const plainVoice: Voice = {
  knowledge,
  solved: new Map(),
  unit: (id) => knowledge.quantities.get(id)!.units.us,
  isGiven: () => false,
};

/** Cards that speak of all the words, those with them in their name first, then in a way of asking. */
export function cardsAbout(text: string): Card[] {
  const asked =
    text
      .toLowerCase()
      .match(/[a-z0-9]{2,30}/g)
      ?.slice(0, 8) ?? [];
  if (asked.length === 0) return [];
  const says = (where: string): boolean => asked.every((word) => where.toLowerCase().includes(word));
  const named = [cards.filter(({ title }) => says(title)), cards.filter(({ asks }) => asks.some(says))].flat();
  const inText = inTexts(asked.map((word) => ({ head: word, typed: stem(word) })));
  const rest = inText.flatMap((id) => cards.find((card) => card.id === id) ?? []);
  return [...new Set([...named, ...rest])];
}

/** A line of a record's page: what it is, and one or several sentences. */
export interface Line {
  readonly label: string;
  readonly texts: readonly string[];
}

/** What a record says, in order: its rule, its reason, its sources. */
export function linesOf(record: AnyRecord): Line[] {
  const line = (label: string, ...texts: (string | undefined)[]): Line => ({
    label,
    texts: texts.filter((text): text is string => text !== undefined && text !== '').map(plain),
  });
  return [
    ...ruleLines(record, line),
    line(words.why, capital(record.because)),
    line(words.isAlso, ...(record.alsoCalled ?? [])),
    line(words.sources, ...record.sources.map(saySource)),
  ].filter(({ texts }) => texts.length > 0);
}

type MakeLine = (label: string, ...texts: (string | undefined)[]) => Line;

function ruleLines(record: AnyRecord, line: MakeLine): Line[] {
  switch (record.kind) {
    case 'limit':
      return [
        line(words.judges, capital(record.on.title)),
        line(words.atMost, boundText(record.max)),
        line(words.atLeast, boundText(record.min)),
        line(words.fix, record.fix),
      ];
    case 'practice':
      return [line(words.judges, capital(record.on.title)), line(words.fix, record.fix)];
    case 'quantity':
      return [line(words.taken, record.default && defaultText(record.default))];
    case 'relation':
      return [
        line(
          words.worked,
          capital(
            `${record.finds.title} = ${inWords(record.by, (leaf) => ('id' in leaf ? titleOf(leaf.id) : figure(leaf)))}`,
          ),
        ),
      ];
    case 'choice':
      return [line(words.options, ...record.options.map(({ title }) => capital(title)))];
    case 'table':
      return [
        line(
          words.rows,
          ...record.rows.map(
            ([at, is]) =>
              `${figure({ ...record.key, number: at } as Figure)}: ${figure({ ...record.value, number: is } as Figure)}`,
          ),
        ),
      ];
    case 'choice-table':
      return [
        line(
          words.rows,
          ...Object.entries(record.rows).map(
            ([option, row]) =>
              `${record.by.options.find(({ id }) => id === option)?.title ?? option}: ${row
                .map((number, i) => figure({ number, unit: record.columns[i]!.unit } as Figure))
                .join(', ')}`,
          ),
        ),
      ];
    case 'step':
      return [
        line(words.done, record.text),
        line(words.checks, ...record.checks),
        line(words.good, record.good),
        line(words.watch, ...(record.cautions ?? [])),
      ];
    case 'fault':
      return [
        line(words.seen, record.seen),
        line(words.causes, ...record.causes.map(({ text, remedy }) => `${text}: ${remedy}`)),
        line(words.now, record.now),
        line(words.nextTime, record.nextTime),
      ];
    case 'repair':
      return [line(words.how, ...record.how)];
    case 'defect':
      return [line(words.seen, record.seen)];
  }
}

const titleOf = (id: string): string => knowledge.quantities.get(id)?.title ?? id;

const figure = ({ number, unit }: Figure): string => sayFigure(toBase(number, unit), unit, { given: true });

function boundText(bound: Figure | QuantityRecord | undefined): string | undefined {
  if (!bound) return undefined;
  if (!isQuantity(bound)) return figure(bound);
  return capital(bound.default ? `${bound.title}, ${defaultText(bound.default)}` : bound.title);
}

function defaultText({ number, unit, low, high }: NonNullable<QuantityRecord['default']>): string {
  const text = figure({ number, unit } as Figure);
  if (low === undefined || high === undefined || low === high) return text;
  return `${text} (${words.range(figure({ number: low, unit } as Figure), figure({ number: high, unit } as Figure))})`;
}

/** A template without a job: figures by their names, clauses that hold only with a figure as they are. */
function plain(text: string): string {
  return text
    .replace(/\[\[([^\]|]{0,300})(?:\|[^\]]{0,300})?\]\]/g, '$1')
    .replace(/\{(?:[a-z]{1,8}:)?([a-z0-9-]{1,80})\}/g, (_, id: string) => titleOf(id));
}
