import { compare, fromBase, toBase } from '../../../calc/quantity.ts';
import type { Unit } from '../../../calc/units.ts';
import { judgeLimit } from '../../../rules/judge.ts';
import type { Knowledge } from '../../../rules/knowledge.ts';
import { type Facts, isQuantity, type LimitRecord, type Source } from '../../../rules/shapes.ts';
import { checkOn } from '../../judging.ts';
import { capital, say } from '../../say.ts';
import type { Voice } from '../../voice.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { limitStems } from '../../wording/quiz-stems.en.ts';
import { isFirm, sayFact, sourcesBehind, voiceOf } from '../facts.ts';
import { inMetric, metricStep } from '../metric.ts';
import type { Desk, Draft } from '../shapes.ts';
import { sayAlso } from '../topics.ts';

/** A limit held against one figure: what the engine says of it, and what that rests on. */
export interface Tried {
  readonly figure: number;
  readonly text: string;
  readonly holds: boolean;
  readonly voice: Voice;
  readonly facts: Facts;
}

/** A limit with the facts of its example, ready to be tried with other figures. */
export interface Trial {
  readonly rule: LimitRecord;
  readonly unit: Unit;
  readonly min: number | undefined;
  readonly max: number | undefined;
  readonly try: (figure: number) => Tried | undefined;
}

/** Undefined for a limit on a figure that its example does not give, or whose bound it leaves open. */
export function trialOf(
  { knowledge, units }: Desk,
  rule: LimitRecord,
  scene: Facts = sceneOf(rule),
): Trial | undefined {
  // Tables by speed, and rules told in miles an hour, are asked in the units they are printed in.
  if (units === 'metric' && ('posted-speed' in scene || 'speed-unit' in scene)) return undefined;
  const facts = units === 'metric' ? factsInMetric(inFeet(rule, scene)) : inFeet(rule, scene);
  const given = facts[rule.on.id];
  if (given === undefined || typeof given === 'string') return undefined;
  const unit = given[1];
  const { solved } = voiceOf(knowledge, facts);
  const active = activeCase(rule, facts);
  const bound = (end: LimitRecord['max']): number | undefined =>
    end && (isQuantity(end) ? solved.get(end.id)?.value : toBase(end.number, end.unit));
  const [min, max] = [bound(active.min), bound(active.max)];
  if (min === undefined && max === undefined) return undefined;
  // A bound that comes to no plain figure in these units is not said in them.
  const plain = (base: number | undefined): boolean =>
    base === undefined || Math.abs(fromBase(base, unit) * 10 - Math.round(fromBase(base, unit) * 10)) < 1e-6;
  if (units === 'metric' && !(plain(min) && plain(max))) return undefined;
  const judgedAt = (figure: number): Tried | undefined => {
    const at = { ...facts, [rule.on.id]: [figure, unit] as const };
    const voice = voiceOf(knowledge, at, units);
    const { status } = judgeLimit(rule, voice.solved);
    if (status !== 'ok' && status !== 'caution' && status !== 'stop') return undefined;
    // Between the limit and the figure from which it stops lies a matter of judgement.
    if (status === 'caution' && (rule.stopFrom || rule.stopOver)) return undefined;
    const text = say(rule.on, toBase(figure, unit), unit, true);
    return { figure, text, holds: status === 'ok', voice, facts: at };
  };
  return { rule, unit, min, max, try: judgedAt };
}

/** The facts that a rule is asked with: those of its example, and what has to be said beside them. */
const sceneOf = (rule: LimitRecord): Facts => ({ ...rule.examples.holds, ...sayAlso[rule.id] });

/** A length that its record says in feet is asked in feet, whatever its example has. */
function inFeet(rule: LimitRecord, facts: Facts): Facts {
  const given = facts[rule.on.id];
  if (typeof given !== 'object' || given[1] !== 'in' || rule.on.units.us !== 'ft') return facts;
  return { ...facts, [rule.on.id]: [given[0] / 12, 'ft'] };
}

const factsInMetric = (facts: Facts): Facts =>
  Object.fromEntries(
    Object.entries(facts).map(([id, fact]) => [id, typeof fact === 'string' ? fact : inMetric(fact)] as const),
  );

/** True for a fact that the stem tells. */
const isSaid = ({ id }: LimitRecord, fact: string): boolean =>
  limitStems[id] === undefined || limitStems[id].includes(`{${fact}}`);

/** Speeds that a rule on a road is asked with. */
const speeds = [35, 45, 55, 65];
const shares = [0.8, 1.2, 1.5];

/** Other facts to ask the same rule with: another speed, or another figure where the bound itself is a fact of the stem. */
export function otherScenes(rule: LimitRecord): Facts[] {
  const facts = sceneOf(rule);
  const ends = new Set(quantitiesOf(rule));
  return Object.entries(facts).flatMap(([id, fact]): Facts[] => {
    if (typeof fact === 'string' || id === rule.on.id || !isSaid(rule, id)) return [];
    const [number, unit] = fact;
    if (id === 'posted-speed' && unit === 'mph') {
      return speeds.filter((speed) => speed !== number).map((speed) => ({ ...facts, [id]: [speed, unit] }));
    }
    if (!ends.has(id)) return [];
    const step = stepAt(number, unit);
    const figures = shares.map((share) => Number((Math.round((number * share) / step) * step).toPrecision(8)));
    return [...new Set(figures)]
      .filter((figure) => figure > 0 && figure !== number)
      .map((figure) => ({ ...facts, [id]: [figure, unit] }));
  });
}

function activeCase(rule: LimitRecord, facts: Facts): Pick<LimitRecord, 'min' | 'max'> {
  const found = rule.cases?.find(({ when }) => when.every(({ choice, is }) => is.includes(String(facts[choice.id]))));
  return { ...(rule.min ? { min: rule.min } : {}), ...(rule.max ? { max: rule.max } : {}), ...found };
}

/** What a draft on a limit has apart from its item. */
export function groundOf(trial: Trial, { voice, facts, holds }: Tried): Omit<Draft, 'item' | 'order' | 'numbers'> {
  const { rule } = trial;
  const rests = restsOf(rule, voice);
  return {
    rests,
    collides: collisions(voice, rule, holds),
    printed: !isFirm(rests),
    unsaid: unsaidOf(rule, voice, facts),
  };
}

function restsOf(rule: LimitRecord, voice: Voice): Source[] {
  const bounds = quantitiesOf(rule).flatMap((id) => sourcesBehind(voice, id));
  return [...rule.sources, ...bounds];
}

const quantitiesOf = (rule: LimitRecord): string[] =>
  [rule, ...(rule.cases ?? [])]
    .flatMap(({ min, max }) => [min, max])
    .flatMap((end) => (end && isQuantity(end) ? [end.id] : []));

/** Defaults behind a bound that the stem does not say; a bound that is itself a default is the rule. */
function unsaidOf(rule: LimitRecord, { solved, knowledge }: Voice, facts: Facts): string[] {
  const bounds = new Set(quantitiesOf(rule));
  const used = [...bounds].flatMap((id) => solved.get(id)?.assumed ?? []);
  const assumed = used.filter((fact) => !bounds.has(fact) && !(fact.split('=')[0]! in facts));
  return [...assumed, ...Object.keys(facts).filter((id) => !isSaid(rule, id) && !isUsual(id, facts[id]!, knowledge))];
}

/** True for a fact that is so anyhow: the default of its record, or a choice that only sets the scene of the rule. */
function isUsual(id: string, fact: Facts[string], { quantities }: Knowledge): boolean {
  if (typeof fact === 'string') return true;
  const usual = quantities.get(id)?.default;
  return usual !== undefined && compare(toBase(...fact), toBase(usual.number, usual.unit)) === 0;
}

/** Rules that say otherwise of the same figures: another one on the same quantity, or one that stands beside this. */
function collisions({ knowledge, solved }: Voice, rule: LimitRecord, holds: boolean): string[] {
  return [...knowledge.limits.values()].flatMap((other) => {
    const beside = other.besideRule === rule.id;
    if (other.id === rule.id || !(beside || (other.on.id === rule.on.id && !other.besideRule))) return [];
    const { status } = judgeLimit(other, solved);
    const broken = status === 'caution' || status === 'stop';
    if (beside ? (status === 'ok' && !holds) || (broken && holds) : broken && holds) return [other.id];
    return other.id === 'stone-fits-lift' && broken ? [other.id] : [];
  });
}

/** The facts in a sentence, with the rule before them where nobody may lean on its source. */
export function situationOf(trial: Trial, { facts, voice }: Tried): string {
  const { rule } = trial;
  const { knowledge } = voice;
  const template = limitStems[rule.id];
  const told = template
    ? template.replace(/\{([a-z0-9-]{1,40})\}/g, (_, id) => sayFact(knowledge, facts, id) ?? id)
    : factsIn(knowledge, facts);
  const rule_ = isFirm(restsOf(rule, voice)) ? '' : `${quiz.ruleOfAgency(rule.title, boundsIn(trial))} `;
  return `${rule_}${capital(told)}`;
}

const factsIn = (knowledge: Knowledge, facts: Facts): string =>
  Object.keys(facts)
    .map((id) =>
      quiz.fact((knowledge.quantities.get(id) ?? knowledge.choices.get(id))!.title, sayFact(knowledge, facts, id)!),
    )
    .join(' ');

function boundsIn({ rule, unit, min, max }: Trial): string {
  const text = (base: number): string => say(rule.on, base, unit, true);
  if (min !== undefined && max !== undefined) return quiz.between(text(min), text(max));
  return max !== undefined ? quiz.atMost(text(max)) : quiz.atLeast(text(min!));
}

/** Why the key is so, as the engine judges it, and where the rule comes from. */
export function judgedBy({ rule }: Trial, { voice }: Tried): { why: string; rule: string; source: string } {
  const { text, source } = checkOn(rule, voice);
  return { why: `${text} ${capital(rule.because)}`, rule: `limit/${rule.id}`, source };
}

/** Figures to try round a bound, in its unit: rounded as people give them, none within a tenth of the bound. */
export function figuresRound(trial: Trial): number[] {
  const ends = [trial.min, trial.max].flatMap((base) => (base === undefined ? [] : [fromBase(base, trial.unit)]));
  const found = new Set<number>();
  for (const end of ends) {
    const step = stepAt(end, trial.unit);
    for (const wanted of wantedRound(end, trial.unit)) {
      const figure = Number((Math.round(wanted / step) * step).toPrecision(8));
      const near = ends.some((other) => compare(Math.abs(figure - other), 0.1 * Math.abs(other)) < 0);
      if (figure > 0 && !near) found.add(figure);
    }
  }
  return [...found].sort((a, b) => a - b);
}

/** Temperatures a few degrees off; of anything else, shares of the bound. */
const wantedRound = (end: number, unit: Unit): number[] =>
  unit === 'degF' || unit === 'degC'
    ? [-20, -15, -10, 10, 15, 20].map((off) => end + (unit === 'degF' ? off : off / 2))
    : [0.3, 0.5, 0.6, 0.7, 0.8, 1.2, 1.4, 1.6, 1.8, 2, 2.5].map((factor) => end * factor);

/** Step that figures of this size are given in. */
function stepAt(figure: number, unit: Unit): number {
  if (unit === 'in') return figure <= 0.5 ? 1 / 16 : figure <= 6 ? 1 / 8 : 1;
  if (unit === 'mph') return figure < 10 ? 0.5 : 5;
  if (unit === 'gal/yd2') return 0.01;
  if (unit === 'ton') return 0.5;
  if (unit === 'ft') return figure < 20 ? 0.5 : figure < 100 ? 5 : 10;
  return metricStep(figure, unit) ?? (unit === '%' || unit === 'degF' ? 5 : 1);
}
