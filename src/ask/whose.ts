import { evaluate } from '../calc/expression.ts';
import { toBase } from '../calc/quantity.ts';
import type { Solved } from '../calc/solve.ts';
import type { Judgement } from '../rules/judge.ts';
import { optionFact } from '../rules/knowledge.ts';
import {
  type Base,
  type Condition,
  type Figure,
  isQuantity,
  type LimitRecord,
  type QuantityRecord,
  type RelationRecord,
  type Source,
} from '../rules/shapes.ts';
import type { Voice } from './voice.ts';

/** Whose bound a limit is held against, when it is not the general one: the asker's, or an agency's with its source. */
export type Owner =
  | { readonly asker: true }
  | { readonly asker: false; readonly name: string; readonly source: Source };

/** The quantities a limit is held against, as the knowledge in use has them. */
function boundsOf({ max, min }: Pick<LimitRecord, 'max' | 'min'>, { knowledge }: Voice): QuantityRecord[] {
  return [max, min].flatMap((bound) => (bound && isQuantity(bound) ? (knowledge.quantities.get(bound.id) ?? []) : []));
}

/** True for a bound that rules work out, by the speed or the stone: a flat figure of an agency cannot loosen it. */
export function isWorkedOut({ rule }: Judgement, voice: Voice): boolean {
  return rule.kind === 'limit' && boundsOf(rule, voice).some((bound) => bound.default === undefined);
}

/** The owner of the bound that a rule was held against, its case taken. */
export function ownerOf(judged: Judgement, voice: Voice): Owner | undefined {
  const { rule } = judged;
  if (rule.kind !== 'limit') return undefined;
  const bounds = boundsOf(rule, voice);
  if (bounds.some((bound) => isOwn(bound, voice))) return { asker: true };
  if (rule.agency)
    return brokeGeneralEnd(judged, rule.agency.ends, voice) ? undefined : ofAgency(rule.agency.name, rule);
  for (const bound of bounds) {
    const record = relationTo(bound.id, voice) ?? bound;
    if (record.agency && voice.solved.has(bound.id) && !voice.isGiven(bound.id))
      return ofAgency(record.agency.name, record);
  }
  return undefined;
}

const ofAgency = (name: string, { sources }: Base): Owner => ({ asker: false, name, source: sources[0] });

/** True where a rule with bounds at both ends was broken at the one that is not the agency's. */
function brokeGeneralEnd({ rule, status, bound }: Judgement, own: readonly string[], { solved }: Voice): boolean {
  if (rule.kind !== 'limit' || !rule.min || !rule.max || (status !== 'caution' && status !== 'stop')) return false;
  const least = isQuantity(rule.min) ? solved.get(rule.min.id)?.value : toBase(rule.min.number, rule.min.unit);
  return !own.includes(bound === least ? 'min' : 'max');
}

/** A bound that has a default, and for which the asker gave another figure. */
const isOwn = (bound: QuantityRecord, { isGiven }: Voice): boolean => bound.default !== undefined && isGiven(bound.id);

/** The relation that found a figure. */
export function relationTo(id: string, { knowledge, solved }: Voice): RelationRecord | undefined {
  const by = solved.get(id)?.by;
  return by && knowledge.relations.get(by.relation.id);
}

/**
 * The same figures without the asker's own bounds, those of every case, and generally without any agency's: what rests on them is worked out
 * again on the same way. The figure judged stays what it is.
 */
export function withoutOwn(rule: LimitRecord, voice: Voice, level: 'agency' | 'general'): Voice {
  const own = new Set(
    [rule, ...(rule.cases ?? [])]
      .flatMap((each) => boundsOf(each, voice))
      .filter((bound) => isOwn(bound, voice))
      .map(({ id }) => id),
  );
  const values = new Map<string, number>();
  const generally = (id: string): number => {
    const before = values.get(id);
    if (before !== undefined) return before;
    const value = reckon(id);
    values.set(id, value);
    return value;
  };
  const reckon = (id: string): number => {
    const fact = voice.solved.get(id);
    if (!fact) return Number.NaN;
    if (id === rule.on.id) return fact.value;
    const record = voice.knowledge.quantities.get(id);
    const isAgencys = record?.agency && !fact.by && fact.assumed.includes(id);
    if (own.has(id) || isAgencys) return defaultOf(record, level, voice) ?? fact.value;
    if (!fact.by) return fact.value;
    const general = level === 'general' ? relationTo(id, voice)?.agency?.general : undefined;
    return evaluate(general ?? fact.by.by, generally);
  };
  const solved = [...voice.solved].flatMap(([id, fact]): (readonly [string, Solved])[] => {
    const value = generally(id);
    return Number.isNaN(value) ? [] : [[id, { ...fact, value, ...(own.has(id) ? { assumed: [id] } : {}) }]];
  });
  return { ...voice, solved: new Map(solved), isGiven: (id) => !own.has(id) && voice.isGiven(id) };
}

/** The default of a quantity in base units; generally, the one an agency's stands in place of. */
function defaultOf(record: QuantityRecord | undefined, level: 'agency' | 'general', voice: Voice): number | undefined {
  const figure = level === 'general' && record?.agency ? generalDefault(record, voice) : record?.default;
  if (!figure) return level === 'general' && record?.agency ? Number.NaN : undefined;
  return toBase(figure.number, figure.unit);
}

/** The default that an agency's stands in place of, as it would be with the choices settled. */
export function generalDefault({ agency }: QuantityRecord, { solved }: Voice): Figure | undefined {
  const holds = ({ choice, is }: Condition): boolean => is.some((option) => solved.has(optionFact(choice.id, option)));
  return agency?.when?.find(({ when }) => when.every(holds))?.figure ?? agency?.general;
}
