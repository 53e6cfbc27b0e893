import { compare, toBase } from '../calc/quantity.ts';
import type { Solution, Solved } from '../calc/solve.ts';
import { optionFact } from './knowledge.ts';
import {
  type ChoiceRecord,
  type Condition,
  type Figure,
  type From,
  isQuantity,
  type LimitCase,
  type LimitRecord,
  type PracticeRecord,
  type QuantityRecord,
} from './shapes.ts';

export type Outcome = 'ok' | 'caution' | 'stop' | 'cannot-tell' | 'not-applicable';

/** What a rule says of the facts at hand. Figures in base units. */
export interface Judgement {
  readonly rule: LimitRecord | PracticeRecord;
  readonly status: Outcome;
  /** The figure judged, and the bound it was held against. */
  readonly on?: number;
  readonly bound?: number;
  /** The option judged, for a rule on how something is done: its own words are said. */
  readonly option?: string;
  /** What would settle it, when it cannot be told. */
  readonly needs: readonly string[];
}

type Facts = Solution;

/** Every quantity that a limit holds its figure against, in any of its cases. */
export function boundsOf(rule: LimitRecord): readonly string[] {
  const bounds = boundsOfRules.get(rule) ?? [rule, ...(rule.cases ?? [])].flatMap(quantitiesOf);
  boundsOfRules.set(rule, bounds);
  return bounds;
}

const boundsOfRules = new WeakMap<LimitRecord, readonly string[]>();

const quantitiesOf = ({ max, min }: Pick<LimitRecord, 'max' | 'min'>): string[] =>
  [max, min].flatMap((bound) => (bound && isQuantity(bound) ? [bound.id] : []));

/** Holds a limit against the facts: four outcomes, never two. */
export function judgeLimit(rule: LimitRecord, facts: Facts): Judgement {
  const applies = conditions(rule.when, facts);
  if (applies !== true) return { rule, ...applies };
  const reached = hasReached(rule.from, facts);
  if (reached !== true) return { rule, ...reached };
  return rule.cases ? judgeCases(rule, rule.cases, facts) : judgeBounds(rule, facts);
}

/** The cases of a rule, each as a rule with its own bounds. */
const caseRules = new WeakMap<LimitRecord, readonly LimitRecord[]>();

function asRules(rule: LimitRecord, cases: readonly LimitCase[]): readonly LimitRecord[] {
  const rules = caseRules.get(rule) ?? cases.map(({ when: _when, ...bounds }) => ({ ...rule, ...bounds }));
  caseRules.set(rule, rules);
  return rules;
}

/** By the first case that holds; where none does and one is not settled yet, it cannot be told. */
function judgeCases(rule: LimitRecord, cases: readonly LimitCase[], facts: Facts): Judgement {
  const open: string[] = [];
  for (let at = 0; at < cases.length; at++) {
    const applies = conditions(cases[at]!.when, facts);
    if (applies === true) return judgeBounds(asRules(rule, cases)[at]!, facts);
    if (applies.status !== 'not-applicable') open.push(...applies.needs);
  }
  if (open.length === 0) return { rule, status: 'not-applicable', needs: [] };
  const needs = [...new Set([...(facts.has(rule.on.id) ? [] : [rule.on.id]), ...open])];
  return { rule, status: 'cannot-tell', needs };
}

function judgeBounds(rule: LimitRecord, facts: Facts): Judgement {
  const on = told(facts.get(rule.on.id));
  const needs = on ? [] : [rule.on.id];
  if (isMissing(rule.max, facts)) needs.push(rule.max.id);
  if (isMissing(rule.min, facts)) needs.push(rule.min.id);
  const most = on && isMissing(rule.max, facts) ? facts.get(rule.ceiling?.is.id ?? '') : undefined;
  if (on && most && compare(on.value, most.value) >= 0) return pastCeiling(rule, on.value, most.value);
  if (!on || needs.length) return { rule, status: 'cannot-tell', needs };
  const max = boundOf(rule.max, facts);
  const min = boundOf(rule.min, facts);
  const past = (side: number): boolean => side > 0 || (rule.strict === true && side === 0);
  const over = max !== undefined && past(compare(on.value, max));
  const under = min !== undefined && past(compare(min, on.value));
  const bound = under ? min : (max ?? min);
  return {
    rule,
    status: over || under ? severity(rule, on.value, over) : 'ok',
    on: on.value,
    ...(bound === undefined ? {} : { bound }),
    needs: [],
  };
}

/** Broken by what the bound can be at most, in the words for that. */
function pastCeiling(rule: LimitRecord, on: number, bound: number): Judgement {
  const text = { ...rule.text, [rule.breaks]: rule.ceiling!.text };
  return { rule: { ...rule, text }, status: rule.breaks, on, bound, needs: [] };
}

/** Holds a rule on how something is done against the facts. */
export function judgePractice(rule: PracticeRecord, facts: Facts): Judgement {
  const applies = conditions(rule.when, facts);
  if (applies !== true) return { rule, ...applies };
  const chosen = rule.on.options[settling(rule.on).findIndex((fact) => facts.has(fact))];
  if (!chosen) return { rule, status: 'cannot-tell', needs: [rule.on.id] };
  const judged = rule.cases?.find(({ when }) => conditions(when, facts) === true)?.judged ?? rule.judged;
  const own = judged === rule.judged ? rule : { ...rule, judged };
  return { rule: own, status: judged[chosen.id]?.status ?? 'ok', option: chosen.id, needs: [] };
}

/** Worst first. */
export const byGravity: readonly Outcome[] = ['stop', 'caution', 'cannot-tell', 'ok', 'not-applicable'];

/** How grave an outcome is, 0 the gravest: of two rules the one that can hurt is told. -1 where nothing is settled. */
export const gravityOf = (status: Outcome): number => settled.indexOf(status);

const settled: readonly Outcome[] = byGravity.filter(
  (status) => status !== 'cannot-tell' && status !== 'not-applicable',
);

function severity(rule: LimitRecord, value: number, over: boolean): Outcome {
  const from = rule.stopFrom ?? rule.stopOver;
  if (rule.breaks === 'stop' || !from) return rule.breaks;
  const beyond = compare(value, toBase(from.number, from.unit)) * (over ? 1 : -1);
  return beyond > 0 || (beyond === 0 && rule.stopFrom !== undefined) ? 'stop' : 'caution';
}

/** The facts that meet a condition, and those that settle a choice, written out once: rules are held against facts over and over. */
const meets = new WeakMap<Condition, readonly string[]>();
const settles = new WeakMap<ChoiceRecord, readonly string[]>();

function meeting(condition: Condition): readonly string[] {
  const { choice, is } = condition;
  const facts = meets.get(condition) ?? is.map((option) => optionFact(choice.id, option));
  meets.set(condition, facts);
  return facts;
}

function settling(choice: ChoiceRecord): readonly string[] {
  const facts = settles.get(choice) ?? choice.options.map(({ id }) => optionFact(choice.id, id));
  settles.set(choice, facts);
  return facts;
}

function holdsOne(facts: Facts, any: readonly string[]): boolean {
  for (const fact of any) if (facts.has(fact)) return true;
  return false;
}

function conditions(when: readonly Condition[] | undefined, facts: Facts): true | { status: Outcome; needs: string[] } {
  if (!when) return true;
  for (const condition of when) {
    if (holdsOne(facts, meeting(condition))) continue;
    const { choice } = condition;
    return holdsOne(facts, settling(choice))
      ? { status: 'not-applicable', needs: [] }
      : { status: 'cannot-tell', needs: [choice.id] };
  }
  return true;
}

/** A figure that was given or worked out. A default is nobody's figure: there is nothing in it to judge. */
const told = (fact: Solved | undefined): Solved | undefined =>
  fact && (fact.by || fact.assumed.length === 0) ? fact : undefined;

function hasReached(from: From | undefined, facts: Facts): true | { status: Outcome; needs: string[] } {
  if (!from) return true;
  const fact = facts.get(from.quantity.id);
  if (!fact) return { status: 'cannot-tell', needs: [from.quantity.id] };
  return (
    compare(fact.value, toBase(from.atLeast.number, from.atLeast.unit)) >= 0 || { status: 'not-applicable', needs: [] }
  );
}

function boundOf(bound: QuantityRecord | Figure | undefined, facts: Facts): number | undefined {
  if (!bound) return undefined;
  return isQuantity(bound) ? facts.get(bound.id)?.value : toBase(bound.number, bound.unit);
}

/** True for a bound that would have to be known, and is not. */
const isMissing = (bound: QuantityRecord | Figure | undefined, facts: Facts): bound is QuantityRecord =>
  bound !== undefined && isQuantity(bound) && !facts.has(bound.id);
