import { gravityOf, judgePractice } from '../rules/judge.ts';
import type { Knowledge } from '../rules/knowledge.ts';
import type { PracticeRecord } from '../rules/shapes.ts';
import { whatFollows } from '../rules/start.ts';
import type { Engine } from './engine.ts';
import { type Fact, knownFrom } from './facts.ts';
import type { Goal, Scored } from './goal.ts';
import { light } from './same-again.ts';
import type { Sentence } from './sentence.ts';
import { isSettled, isStatement } from './stated.ts';
import { asksNext } from './step-stage.ts';
import type { Taken } from './taken.ts';

/**
 * "Open it with loose rock all over?" names no goal, but says how something is done: the practice that judges it is meant.
 * Undefined where nothing is asked, or nothing said is judged.
 */
export function impliedPractice(
  knowledge: Knowledge,
  sentence: Sentence,
  { fresh, facts }: Pick<Taken, 'fresh' | 'facts'>,
): Goal | undefined {
  if (!asks(sentence)) return undefined;
  const said = new Map(fresh.flatMap((fact) => ('choice' in fact ? [[fact.quantity, fact.choice] as const] : [])));
  const rank = ({ on, judged }: PracticeRecord): number => gravityOf(judged[said.get(on.id)!]?.status ?? 'ok');
  const [gravestOne] = knowledge.records.practices
    .filter((rule) => rule.cues && said.has(rule.on.id) && applies(knowledge, rule, facts))
    .sort((a, b) => rank(a) - rank(b));
  return gravestOne && { kind: 'practice', id: gravestOne.id };
}

/**
 * "Tack hasn't turned black, lay on it" asks nothing: it is put to be judged all the same where what it tells breaks a
 * practice. Undefined where nothing does.
 */
export function brokenPractice(
  knowledge: Knowledge,
  { fresh, facts }: Pick<Taken, 'fresh' | 'facts'>,
): Goal | undefined {
  const said = new Map(fresh.flatMap((fact) => ('choice' in fact ? [[fact.quantity, fact.choice] as const] : [])));
  if (said.size === 0) return undefined;
  const solved = whatFollows(knowledge, knownFrom(facts));
  const rank = (rule: PracticeRecord): number => gravityOf(judgePractice(rule, solved).status);
  const [worst] = [...knowledge.practices.values()]
    .filter((rule) => rule.cues && said.has(rule.on.id) && (rank(rule) === 0 || rank(rule) === 1))
    .sort((a, b) => rank(a) - rank(b));
  return worst && { kind: 'practice', id: worst.id };
}

/** False for a rule whose conditions are settled otherwise: no water in cutback, where the tack is emulsion. */
function applies(knowledge: Knowledge, rule: PracticeRecord, facts: readonly Fact[]): boolean {
  if (!rule.when) return true;
  const solved = whatFollows(knowledge, knownFrom(facts));
  return judgePractice(rule, solved).status !== 'not-applicable';
}

/**
 * "It's 44 out and dropping, can we lay?" names no goal either: of the limits that stand by themselves, the one on a
 * figure just given is meant. Undefined where figures given belong to several.
 */
export function impliedLimit(
  { records }: Knowledge,
  sentence: Sentence,
  { told }: Taken,
  goesOn = false,
): Goal | undefined {
  if (!asks(sentence) && (goesOn || !isStatement(sentence))) return undefined;
  const [meant, ...others] = records.limits.filter(({ on, cues }) => cues && told.has(on.id));
  return meant && others.length === 0 ? { kind: 'limit', id: meant.id } : undefined;
}

/**
 * "Emulsion is still runny, put the mix down?" says what is done, and what is heard of a step or of a quantity in it is only
 * its setting: the rule is meant that judges what was said. So it is where a fault is heard in what somebody asks leave for,
 * and where the figure given is judged by a rule, and leads to nothing else. Undefined where what was found stands.
 */
export function judgedInstead(
  engine: Engine,
  sentence: Sentence,
  found: Scored | undefined,
  take: (goal: Goal | undefined) => Taken,
  goesOn: boolean,
): Goal | undefined {
  const isChecked = sentence.places.has('@check');
  const isTold = !goesOn && !isChecked && found?.kind === 'quantity' && isStatement(sentence);
  if (!found || asksNext(sentence)) return undefined;
  const { knowledge } = engine;
  const isStep = found.kind === 'step' && !/^(?:next|rest|done|whole|before|after|between)/.test(found.id);
  if (!asks(sentence) && isStatement(sentence) && isStep) {
    const broken = brokenPractice(knowledge, take(undefined));
    if (broken) return broken;
  }
  if (!(isTold || asks(sentence))) return undefined;
  if (isTold && found.score < light) {
    const told = settledInstead(engine, sentence, take);
    if (told) return told;
  }
  if (found.kind === 'step' || (found.kind === 'fault' && isChecked))
    return impliedPractice(knowledge, sentence, take(undefined));
  if (found.kind === 'quantity' && sentence.figures.length === 0 && !isTold)
    return impliedPractice(knowledge, sentence, take(found));
  if (!isChecked && !isTold) return undefined;
  const figured = found.kind === 'limit' && sentence.figures.length > 0 ? knowledge.limits.get(found.id) : undefined;
  if (figured)
    return isSettled(engine, figured, take(found))
      ? undefined
      : (settledInstead(engine, sentence, take) ?? brokenPractice(knowledge, take(found)));
  if (found.kind === 'limit' || found.kind === 'practice') {
    const taken = take(found);
    const on = knowledge.practices.get(found.id)?.on.id;
    return taken.fresh.some(({ quantity }) => quantity === on)
      ? undefined
      : impliedPractice(knowledge, sentence, taken);
  }
  if (found.kind !== 'quantity') return undefined;
  const taken = take(found);
  if (!taken.fresh.some((fact) => 'unit' in fact))
    return isTold ? undefined : impliedPractice(knowledge, sentence, taken);
  const solved = whatFollows(knowledge, knownFrom(taken.facts));
  const meant = solved.has(found.id) ? undefined : impliedLimit(knowledge, sentence, take(undefined));
  const rule = meant && knowledge.limits.get(meant.id);
  return rule && isTold && !isSettled(engine, rule, take(meant)) ? undefined : meant;
}

/** "Is the tank too hot, tack at 120 degrees": the limit on the figure just given, where that settles it. */
function settledInstead(engine: Engine, sentence: Sentence, take: (goal: Goal | undefined) => Taken): Goal | undefined {
  const meant = impliedLimit(engine.knowledge, sentence, take(undefined));
  const rule = meant && engine.knowledge.limits.get(meant.id);
  return rule && isSettled(engine, rule, take(meant)) ? meant : undefined;
}

const asks = ({ places, tokens }: Sentence): boolean =>
  places.has('@check') || tokens.some((token) => token.kind === 'mark' && token.text === '?');
