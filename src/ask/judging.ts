import { fromBase, toBase } from '../calc/quantity.ts';
import { byGravity, type Judgement, judgeLimit, judgePractice } from '../rules/judge.ts';
import type { Knowledge } from '../rules/knowledge.ts';
import { isQuantity, type LimitRecord, type PracticeRecord } from '../rules/shapes.ts';
import type { Check, Verdict } from './reply.ts';
import { fill, say, saySource } from './say.ts';
import type { Voice } from './voice.ts';
import { isWorkedOut, type Owner, ownerOf, withoutOwn } from './whose.ts';
import { en } from './wording/en.ts';

export type { Voice } from './voice.ts';

/** What a rule says here, as a verdict; a bound that is an agency's or the asker's own is named as theirs. */
export function verdictOf(rule: LimitRecord | PracticeRecord, voice: Voice): Verdict {
  const { source: _source, ...verdict } = checkOn(rule, voice);
  return verdict;
}

/** The same with its source. */
export const checkOn = (rule: LimitRecord | PracticeRecord, voice: Voice): Check => checkedBy(rule, voice)[0];

/** Every rule that bears on the quantities named, worst first. Where an agency or the asker has another figure, the general rule stands beside it. */
export function checksOn(about: ReadonlySet<string>, voice: Voice): Check[] {
  return rulesOn(about, voice.knowledge)
    .flatMap((rule) => checkedBy(rule, voice))
    .filter((check) => check.status !== 'not-applicable')
    .sort((a, b) => gravity(a) - gravity(b) || (a.rule < b.rule ? -1 : 1));
}

type Rule = LimitRecord | PracticeRecord;

/** The rules of a knowledge base by what they judge, each with its place among all. */
const ruleIndexes = new WeakMap<Knowledge, ReadonlyMap<string, readonly (readonly [number, Rule])[]>>();

/** The rules that judge one of these quantities or choices, in the order of the records. */
function rulesOn(about: ReadonlySet<string>, knowledge: Knowledge): Rule[] {
  const index = ruleIndexes.get(knowledge) ?? ruleIndex(knowledge);
  ruleIndexes.set(knowledge, index);
  return [...about]
    .flatMap((id) => index.get(id) ?? [])
    .sort(([a], [b]) => a - b)
    .map(([, rule]) => rule);
}

function ruleIndex({ limits, practices }: Knowledge): Map<string, (readonly [number, Rule])[]> {
  const index = new Map<string, (readonly [number, Rule])[]>();
  for (const [place, rule] of [...limits.values(), ...practices.values()].entries())
    index.set(rule.on.id, [...(index.get(rule.on.id) ?? []), [place, rule]]);
  return index;
}

const gravity = ({ status }: Verdict): number => byGravity.indexOf(status);

/** What a rule says here; where its bound is not the general one, what the rules it stands in place of say comes after. */
function checkedBy(rule: LimitRecord | PracticeRecord, voice: Voice): readonly [Check, ...Check[]] {
  const judged = judge(rule, voice);
  const owner = ownerOf(judged, voice);
  if (rule.kind !== 'limit' || !owner) return [checkOf(judged, voice)];
  const general = generalCheck(rule, voice);
  if (!owner.asker) {
    const own = checkOf(judged, voice, owner, general.bound);
    const tighter = rule.agency && general.workedOut && gravity(general.check) < gravity(own);
    return tighter ? [general.check, own] : [own, general.check];
  }
  const agency = withoutOwn(rule, voice, 'agency');
  const theirs = ownerOf(judgeLimit(rule, agency.solved), agency);
  return [checkOf(judged, voice, owner), ...(theirs ? checkedBy(rule, agency) : [general.check])];
}

function checkOf(judged: Judgement, voice: Voice, owner?: Owner, general?: string): Check {
  const { rule, status, needs } = judged;
  const text = textOf(judged, voice);
  const said = !owner ? text : en.byRuleOf(text, owner.asker ? en.yourRule : en.agencyFigure(owner.name, general));
  const { sources } = rule.kind === 'limit' && rule.agency ? rule.agency.general : rule;
  const source = !owner ? saySource(sources[0]) : owner.asker ? en.yourRule : saySource(owner.source);
  const id = rule.underRule ?? rule.id;
  return { rule: id, status, text: said, source, ...(needs.length ? { needs } : {}) };
}

/** The general rule, where another figure stands in its place: what it says of the same figure, and its bound in words. */
function generalCheck(
  rule: LimitRecord,
  voice: Voice,
): { check: Check; bound: string | undefined; workedOut: boolean } {
  const general = withoutOwn(rule, voice, 'general');
  const judged = judgeLimit(rule.agency?.general ?? rule, general.solved);
  const check = checkOf(judged, general);
  return {
    check: { ...check, text: en.generally(check.text) },
    bound: boundInWords(judged, general),
    workedOut: isWorkedOut(judged, voice),
  };
}

const judge = (rule: LimitRecord | PracticeRecord, { solved }: Voice): Judgement =>
  rule.kind === 'limit' ? judgeLimit(rule, solved) : judgePractice(rule, solved);

function textOf(judged: Judgement, voice: Voice): string {
  const { rule, status } = judged;
  const broken = status === 'stop' || status === 'caution';
  const body = rule.kind === 'limit' ? limitText(rule, judged, voice) : practiceText(rule, judged);
  return en.judged(en.status[status], body, broken ? rule.fix : undefined);
}

function limitText(rule: LimitRecord, judged: Judgement, voice: Voice): string {
  const { text } = rule;
  const { status, on } = judged;
  if (status === 'not-applicable') return text.notApplicable ?? rule.title;
  const template =
    status === 'ok'
      ? text.ok
      : status === 'cannot-tell'
        ? text.cannotTell
        : ((status === 'stop' ? (text.stop ?? text.caution) : (text.caution ?? text.stop)) ?? text.ok);
  return fill(template, (name) => {
    if (name === 'on') return inWordsOf(rule, on, voice);
    if (name === 'limit') return boundInWords(judged, voice);
    return figureOf(name, voice);
  });
}

/** What a rule says while it waits for what it judges: of a practice all of it, of a limit its figures, where it names them. */
export function wantingText(rule: LimitRecord | PracticeRecord, voice: Voice): string | undefined {
  if (rule.kind === 'practice') return rule.cannotTell;
  const judged = judge(rule, voice);
  const text = judged.status === 'cannot-tell' ? limitText(rule, judged, voice) : '';
  return /\d/.test(text) ? text : undefined;
}

const inWordsOf = ({ on }: LimitRecord, base: number | undefined, voice: Voice): string | undefined =>
  base === undefined ? undefined : say(on, base, voice.unit(on.id), voice.isGiven(on.id));

/** The bound a limit was held against; of one that could not be judged, its first. */
function boundInWords({ rule, bound }: Judgement, voice: Voice): string | undefined {
  const base = rule.kind === 'limit' ? (bound ?? firstBound(rule, voice)) : undefined;
  if (rule.kind !== 'limit' || base === undefined) return undefined;
  const unit = voice.unit(rule.on.id);
  return say(rule.on, base, unit, voice.isGiven(rule.on.id) && isPlain(fromBase(base, unit)));
}

/** True for a figure that people say as it stands: two thirds in percent is none, nor 55 degrees turned into metric. */
const isPlain = (number: number): boolean => Math.abs(number * 100 - Math.round(number * 100)) < 1e-6;

/** The bound of a rule that could not be judged, when it is known all the same. */
function firstBound({ max, min }: LimitRecord, { solved }: Voice): number | undefined {
  const bound = max ?? min;
  if (!bound) return undefined;
  return isQuantity(bound) ? solved.get(bound.id)?.value : toBase(bound.number, bound.unit);
}

function practiceText({ cannotTell, judged, title }: PracticeRecord, { status, option }: Judgement): string {
  if (status === 'cannot-tell') return cannotTell;
  return (option && judged[option]?.text) ?? title;
}

/** A known quantity in words, in the units of the answer. */
export function figureOf(id: string, voice: Voice): string | undefined {
  const record = voice.knowledge.quantities.get(id);
  const fact = voice.solved.get(id);
  return record && fact ? say(record, fact.value, voice.unit(id), voice.isGiven(id)) : undefined;
}
