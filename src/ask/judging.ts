import { toBase } from '../calc/quantity.ts';
import type { Solved } from '../calc/solve.ts';
import type { Unit } from '../calc/units.ts';
import { byGravity, type Judgement, judgeLimit, judgePractice } from '../rules/judge.ts';
import type { Knowledge } from '../rules/knowledge.ts';
import { isQuantity, type LimitRecord, type PracticeRecord, type QuantityRecord } from '../rules/shapes.ts';
import type { Check, Verdict } from './reply.ts';
import { fill, say, saySource } from './say.ts';
import { en } from './wording/en.ts';

/** How figures of an answer are worded: in its units. */
export interface Voice {
  readonly knowledge: Knowledge;
  readonly solved: ReadonlyMap<string, Solved>;
  readonly unit: (id: string) => Unit;
  /** True for a figure the asker gave: it is echoed as typed. */
  readonly isGiven: (id: string) => boolean;
}

/** What a rule says here, as a verdict; a bound that is an agency's or the asker's own is named as theirs. */
export function verdictOf(rule: LimitRecord | PracticeRecord, voice: Voice): Verdict {
  const judged = judge(rule, voice);
  const owner = ownerOf(rule, voice);
  const text = textOf(judged, voice);
  return { rule: rule.id, status: judged.status, text: owner ? en.byRuleOf(text, owner) : text, ...(judged.needs.length ? { needs: judged.needs } : {}) };
}

/** Every rule that bears on the quantities named, worst first. Where an agency or the asker has another figure, the general rule stands beside it. */
export function checksOn(about: ReadonlySet<string>, voice: Voice): Check[] {
  const { limits, practices } = voice.knowledge;
  const bearing = [...limits.values(), ...practices.values()].filter((rule) => about.has(rule.on.id));
  return bearing
    .flatMap((rule) => [checkOf(rule, voice), ...generalCheck(rule, voice)])
    .filter((check) => check.status !== 'not-applicable')
    .sort((a, b) => byGravity.indexOf(a.status) - byGravity.indexOf(b.status) || (a.rule < b.rule ? -1 : 1));
}

const checkOf = (rule: LimitRecord | PracticeRecord, voice: Voice): Check => ({ ...verdictOf(rule, voice), source: saySource(rule.sources[0]) });

/** Whose figure a limit is held against, when it is not the general one. */
function ownerOf(rule: LimitRecord | PracticeRecord, voice: Voice): string | undefined {
  if (rule.kind !== 'limit') return undefined;
  if (rule.agency) return rule.agency.name;
  const bound = boundOf(rule, voice);
  return bound && (bound.agency?.name ?? (bound.default && voice.isGiven(bound.id) ? en.yourRule : undefined));
}

/** The quantity a limit is held against, as the knowledge in use has it. */
function boundOf({ max, min }: LimitRecord, { knowledge }: Voice): QuantityRecord | undefined {
  const bound = max ?? min;
  return bound && isQuantity(bound) ? knowledge.quantities.get(bound.id) : undefined;
}

/** The general rule, where another figure stands in its place. */
function generalCheck(rule: LimitRecord | PracticeRecord, voice: Voice): Check[] {
  if (rule.kind !== 'limit' || !ownerOf(rule, voice)) return [];
  const bound = boundOf(rule, voice);
  const figure = bound?.agency?.general ?? bound?.default;
  const general = rule.agency?.general ?? (figure && { ...rule, [rule.max ? 'max' : 'min']: figure });
  if (!general) return [];
  const judged = judgeLimit(general, voice.solved);
  return [{ rule: rule.id, status: judged.status, text: en.generally(textOf(judged, voice)), source: saySource(rule.sources.at(-1)!) }];
}

const judge = (rule: LimitRecord | PracticeRecord, { solved }: Voice): Judgement => (rule.kind === 'limit' ? judgeLimit(rule, solved) : judgePractice(rule, solved));

function textOf(judged: Judgement, voice: Voice): string {
  const { rule, status } = judged;
  const broken = status === 'stop' || status === 'caution';
  const body = rule.kind === 'limit' ? limitText(rule, judged, voice) : practiceText(rule, judged);
  return en.judged(en.status[status], body, broken ? rule.fix : undefined);
}

function limitText(rule: LimitRecord, { status, on, bound }: Judgement, voice: Voice): string {
  const { text } = rule;
  if (status === 'not-applicable') return text.notApplicable ?? rule.title;
  const template = status === 'ok' ? text.ok : status === 'cannot-tell' ? text.cannotTell : ((status === 'stop' ? (text.stop ?? text.caution) : (text.caution ?? text.stop)) ?? text.ok);
  const words = (base: number | undefined): string | undefined => (base === undefined ? undefined : say(rule.on, base, voice.unit(rule.on.id), voice.isGiven(rule.on.id)));
  return fill(template, (name) => {
    if (name === 'on') return words(on);
    if (name === 'limit') return words(bound ?? firstBound(rule, voice));
    return figureOf(name, voice);
  });
}

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
