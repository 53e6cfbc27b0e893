import { judgePractice } from '../../../rules/judge.ts';
import type { Facts, PracticeRecord } from '../../../rules/shapes.ts';
import { checkOn } from '../../judging.ts';
import { capital, saySource } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { goAheadStems, practiceStems } from '../../wording/quiz-stems.en.ts';
import { sayFact, voiceOf } from '../facts.ts';
import type { Random } from '../random.ts';
import type { Desk, Draft, Form, Wish } from '../shapes.ts';
import { judgement, mustPass, topicsOf } from '../topics.ts';
import { oneOf, type Wrong, yesOrNo } from './text.ts';

/** One way of doing it, as the engine judges it. */
interface Way {
  readonly rule: PracticeRecord;
  readonly facts: Facts;
  readonly title: string;
  readonly status: 'ok' | 'caution' | 'stop';
}

/**
 * The ways to ask about a rule on how something is done. Where a wrong way kills, the wrong one is only ever to be found
 * among right ones, so that nobody goes home with a wrong one that looked right.
 */
export function practiceForms(desk: Desk, rule: PracticeRecord): Form[] {
  const ways = waysOf(desk, rule);
  const forms: Form[] = [
    { id: 'right', kind: 'true-false', level: 'easy', make: (random, wish) => isItRight(desk, ways, random, wish) },
    {
      id: 'unsafe',
      kind: 'one',
      level: mustPass.has(rule.id) ? 'easy' : 'medium',
      make: (random) => whatIsUnsafe(desk, ways, random),
    },
  ];
  if (!mustPass.has(rule.id) && !rule.cases) {
    forms.push({ id: 'which', kind: 'one', level: 'easy', make: (random) => whichIsRight(desk, ways, random) });
  }
  return forms;
}

const known = new WeakMap<Desk['knowledge'], Map<string, readonly Way[]>>();

/** Every way that can be judged without a doubt; judged once for each knowledge base. */
function waysOf({ knowledge }: Desk, rule: PracticeRecord): readonly Way[] {
  const ways = known.get(knowledge) ?? new Map<string, readonly Way[]>();
  known.set(knowledge, ways);
  const found = ways.get(rule.id) ?? judgedWays(knowledge, rule);
  ways.set(rule.id, found);
  return found;
}

/** Of a rule with cases only the ways that its examples settle. */
function judgedWays(knowledge: Desk['knowledge'], rule: PracticeRecord): Way[] {
  const when = Object.fromEntries((rule.when ?? []).map(({ choice, is }) => [choice.id, is[0]!]));
  const facts: Facts[] = rule.cases
    ? (rule.examples ?? []).filter(({ is }) => is !== 'cannot-tell').map((example) => example.facts)
    : rule.on.options.map(({ id }) => ({ ...when, [rule.on.id]: id }));
  return facts.flatMap((each): Way[] => {
    const option = rule.on.options.find(({ id }) => id === each[rule.on.id]);
    const { status } = judgePractice(rule, voiceOf(knowledge, each).solved);
    if (!option || judgement.has(`${rule.id}/${option.id}`)) return [];
    return status === 'ok' || status === 'caution' || status === 'stop'
      ? [{ rule, facts: each, title: option.title, status }]
      : [];
  });
}

function isItRight(desk: Desk, ways: readonly Way[], random: Random, { yes }: Wish): Draft | undefined {
  const fitting = ways.filter(({ status }) => (status === 'ok') === yes);
  if (fitting.length === 0) return undefined;
  const way = random.pick(fitting);
  const asked = goAheadStems.has(way.rule.id) ? quiz.goAhead : quiz.right;
  return yesOrNo({ stem: asked(situation(desk, way)), ...ground(desk, way) }, quiz, yes);
}

/** The facts of a way in sentences, those that only set the scene first. */
function situation({ knowledge }: Desk, { rule, facts }: Way, hidden?: string): string {
  const say = (id: string): string => (id === hidden ? quiz.gap : sayFact(knowledge, facts, id)!);
  const template = practiceStems[rule.id];
  if (template) return capital(template.replace(/\{([a-z0-9-]{1,40})\}/g, (_, id: string) => say(id)));
  const scene = Object.keys(facts).reverse();
  return scene.map((id) => quiz.fact(knowledge.choices.get(id)!.title, say(id))).join(' ');
}

function whichIsRight(desk: Desk, ways: readonly Way[], random: Random): Draft | undefined {
  const right = ways.filter(({ status }) => status === 'ok');
  const wrong = ways.filter(({ status }) => status !== 'ok');
  if (right.length === 0 || wrong.length < 2) return undefined;
  const key = random.pick(right);
  const others = wrong.map(({ title }): Wrong => ({ text: capital(title), mistake: 'wrong-way' }));
  return oneOf(
    random,
    { stem: quiz.whichRight(situation(desk, key, key.rule.on.id)), ...ground(desk, key) },
    capital(key.title),
    others,
  );
}

/** One thing that has to be stopped, among things that are as they should be. */
function whatIsUnsafe(desk: Desk, ways: readonly Way[], random: Random): Draft | undefined {
  const stops = ways.filter(({ status, rule }) => status === 'stop' && !rule.cases);
  if (stops.length === 0) return undefined;
  const key = random.pick(stops);
  const near = new Set(topicsOf(key.rule.id));
  const safe = [...desk.knowledge.practices.values()]
    .filter((rule) => rule.id !== key.rule.id && rule.on.id !== key.rule.on.id && !rule.cases)
    .filter((rule) => topicsOf(rule.id).some((topic) => near.has(topic)))
    .flatMap((rule) => random.shuffle(waysOf(desk, rule).filter(({ status }) => status === 'ok')).slice(0, 1));
  const others = safe.map((way): Wrong => ({ text: situation(desk, way), mistake: 'does-hold' }));
  return oneOf(random, { stem: random.pick(quiz.unsafe), ...ground(desk, key) }, situation(desk, key), others);
}

/** How a rule is kept, in sentences: one for each way that holds. */
export function rightWays(desk: Desk, rule: string): string[] {
  const record = desk.knowledge.practices.get(rule);
  const ways = record ? waysOf(desk, record) : [];
  return ways.filter(({ status }) => status === 'ok').map((way) => situation(desk, way));
}

/** One way of a rule, with how it is judged and why; undefined for a rule or an option that there is none of. */
export function wayOf(
  desk: Desk,
  rule: string,
  option: string,
): { readonly rule: PracticeRecord; readonly status: Way['status']; readonly why: string } | undefined {
  const record = desk.knowledge.practices.get(rule);
  const way = record && waysOf(desk, record).find(({ facts }) => facts[record.on.id] === option);
  return way && { rule: way.rule, status: way.status, why: ground(desk, way).why };
}

function ground({ knowledge }: Desk, { rule, facts }: Way) {
  const { text } = checkOn(rule, voiceOf(knowledge, facts));
  return {
    why: `${text} ${capital(rule.because)}`,
    rule: `practice/${rule.id}`,
    source: saySource(rule.sources[0]),
    rests: rule.sources,
  };
}
