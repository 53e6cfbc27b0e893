import { toBase } from '../calc/quantity.ts';
import { restsOn } from '../calc/solve.ts';
import { choiceOf } from '../rules/knowledge.ts';
import type { LimitRecord, PracticeRecord } from '../rules/shapes.ts';
import { withAdded } from './added.ts';
import { isBesideThePoint } from './beside-the-point.ts';
import { askFor, askNeed, askWhat } from './clarify.ts';
import { dumpsOf } from './dumps.ts';
import { startsOf } from './engine.ts';
import { compared } from './enough.ts';
import { givenOf, keptOf } from './facts.ts';
import { faultReply } from './faults.ts';
import { type Goal, goalText } from './goal.ts';
import { ignoredIn } from './ignored.ts';
import { brokenPractice } from './implied-rule.ts';
import { readJob } from './job.ts';
import { judgedBeside, unjudgedOn } from './judged-beside.ts';
import { checksOn, type Voice, verdictOf } from './judging.ts';
import { lookAlike } from './look-alike.ts';
import { needOf } from './need.ts';
import { repairReply } from './repairs.ts';
import type { AssumedFact, Check, Reply, Value, Verdict, Working } from './reply.ts';
import { capital, say, sayEnds } from './say.ts';
import type { Scene } from './scene.ts';
import { isStatement } from './stated.ts';
import { stepsFor, stepsReply } from './steps.ts';
import { whyReply } from './why.ts';
import { askingHeads } from './wording/asking.ts';
import { en } from './wording/en.ts';
import { assumedBy, figureOf, notesOn, sayChoice, workingOf } from './working.ts';
import { asLaidOut, zoneOf } from './zone.ts';

/** Answers what a question was taken to mean. */
export function answer(scene: Scene): Reply {
  const { goal } = scene.understood;
  if (goal && hasReason(goal) && scene.understood.sentence.places.has('@why')) return whyReply(scene, goal);
  const { cards } = scene.parts;
  const card = cards?.instead(scene);
  if (cards && card) return cards.reply(scene, card);
  if (!goal || scene.understood.isFaint || isBesideThePoint(scene)) {
    const near = lookAlike(scene);
    const broken = near || goal ? undefined : toldBroken(scene);
    if (broken) return verdictReply(scene, broken);
    return near ? workReply({ ...scene, job: { ...scene.job, goal: goalText(near) } }, near) : askWhat(scene);
  }
  if (goal.kind === 'step') return stepsReply(scene, goal.id);
  if (goal.kind === 'fault' || goal.kind === 'defect' || goal.kind === 'repair') return workReply(scene, goal);
  if (goal.kind !== 'quantity') return verdictReply(scene, goal.id);
  const laidOut = inItsPlace(scene, asLaidOut(scene, goal.id));
  const ruled = ruledBy(scene, goal.id);
  if (ruled) return verdictReply(scene, ruled);
  const comparison = compared(scene, goal.id);
  if (comparison) {
    const reply = body(comparison.scene, besideOf(comparison.scene, goal.id), comparison.verdict);
    return {
      ...reply,
      text: [
        reply.text,
        reply.values
          .slice(1)
          .map((value) => lineOf(comparison.scene.voice, value))
          .join(' '),
      ]
        .filter(Boolean)
        .join('\n'),
      kind: 'verdict',
      topic: goal.id,
      verdict: comparison.verdict,
    };
  }
  const own =
    scene.understood.sentence.places.has('@check') &&
    scene.understood.fresh.some(({ quantity }) => quantity === goal.id);
  const unjudged = scene.voice.solved.get(laidOut)?.by ? undefined : unjudgedOn(scene, goal.id);
  if (unjudged) return verdictReply(scene, unjudged);
  if (scene.voice.solved.has(laidOut) && !own) return valueReply(scene, laidOut);
  const broken = scene.understood.sentence.figures.length > 0 ? undefined : toldBroken(scene);
  if (broken) return verdictReply(scene, broken);
  return (
    (isStatement(scene.understood.sentence) ? toldAbout(scene, `quantity/${goal.id}`) : undefined) ??
    askFor(scene, laidOut)
  );
}

const workReply = (scene: Scene, { kind, id }: Goal): Reply =>
  kind === 'fault' ? faultReply(scene, id) : repairReply(scene, { kind: kind === 'defect' ? 'defect' : 'repair', id });

/** The practice that what is told breaks, where nothing is asked and nothing else answers. */
const toldBroken = ({ understood, engine }: Scene): string | undefined =>
  isStatement(understood.sentence) ? brokenPractice(engine.knowledge, understood)?.id : undefined;

/** The card about a record, where one tells more than a question back would. */
function toldAbout(scene: Scene, record: string): Reply | undefined {
  const { cards } = scene.parts;
  const card = cards?.about(scene, record);
  return cards && card ? cards.reply(scene, card) : undefined;
}

/** "Which side first on a crowned road" asks for the rule; it tells nothing to be judged. */
const asksWhich = ({ understood: { sentence } }: Scene): boolean =>
  askingHeads.some((head) => sentence.places.has(head));

/** True where something was said that decides which way a practice is judged: then the rest is asked for. */
const isNarrowed = ({ understood }: Scene, { when = [], cases = [] }: PracticeRecord): boolean =>
  [...when, ...cases.flatMap((each) => each.when)].some(({ choice }) =>
    understood.fresh.some(({ quantity }) => quantity === choice.id),
  );

/** "It's a banked curve though", after a rule was asked about: what it says there is told, whatever is still open. */
const isToldMore = (scene: Scene, rule: LimitRecord | PracticeRecord): boolean =>
  rule.kind === 'practice' &&
  readJob(scene.request.job)?.goal === goalText({ kind: rule.kind, id: rule.id }) &&
  isNarrowed(scene, rule);

/** What has a reason of its own: a rule, or a quantity with its figure. */
export const hasReason = ({ kind }: Goal): boolean => kind === 'limit' || kind === 'practice' || kind === 'quantity';

/**
 * The limit that judges the asker's own figure where nothing but a usual figure stands against it: "bar at .08, 60 %
 * residue, are we good" is held against what the surface takes, not against the one rate taken when nobody says.
 */
function ruledBy({ understood, engine, voice }: Scene, id: string): string | undefined {
  const { places } = understood.sentence;
  if (!understood.fresh.some(({ quantity }) => quantity === id) || places.has('@enough')) return undefined;
  const target = needOf(engine, understood.facts, id)?.need.assumed.find((each) => voice.solved.get(each)?.by);
  return target && engine.knowledge.records.limits.find(({ on }) => on.id === target)?.id;
}

function valueReply(plain: Scene, goal: string): Reply {
  const id = settledAs(plain, goal);
  const { scene, working, note } = withAdded(plain, id);
  const reply = body(scene, besideOf(scene, id));
  const zone = zoneOf(id, scene.voice);
  return {
    ...reply,
    kind: 'value',
    topic: id,
    ...(working ? { working: [...reply.working, working] } : {}),
    ...(zone ? { layout: zone.layout, load: zone.load } : { layout: dumpsOf(id, scene.voice) }),
    text: [reply.text, note, ...(zone?.lines ?? [])].filter((line) => line !== undefined).join('\n'),
  };
}

/** What is asked for, or where only another that answers for it can be worked out, that one. */
function inItsPlace({ engine, voice }: Scene, id: string): string {
  if (voice.solved.has(id)) return id;
  const other = engine.knowledge.records.quantities.find(({ answersFor }) => answersFor?.id === id);
  return other && voice.solved.has(other.id) ? other.id : id;
}

/** A quantity and those told beside it, as far as they are known. */
function besideOf({ voice, engine }: Scene, id: string): string[] {
  const { beside = [] } = engine.knowledge.quantities.get(id)!;
  return [id, ...beside.filter((other) => voice.solved.has(other))];
}

/** The quantity that one which stands in for others came from. */
function settledAs({ engine, voice }: Scene, id: string): string {
  const from = engine.knowledge.quantities.get(id)?.standsIn
    ? voice.solved.get(id)?.by?.needs.find((need) => engine.knowledge.quantities.has(need))
    : undefined;
  return from ?? id;
}

function verdictReply(scene: Scene, id: string): Reply {
  const { knowledge } = scene.engine;
  const named = knowledge.limits.get(id) ?? knowledge.practices.get(id)!;
  const rule = judgedBeside(scene, named) ?? named;
  const verdict = verdictOf(rule, scene.voice);
  const open =
    verdict.status === 'cannot-tell' && !scene.understood.sentence.places.has('@check') && !isToldMore(scene, rule)
      ? askNeed(scene, rule, verdict.needs)
      : undefined;
  const about =
    open && rule.kind === 'practice' && (!isNarrowed(scene, rule) || asksWhich(scene))
      ? toldAbout(scene, `practice/${id}`)
      : undefined;
  if (about) return about;
  if (open) return open;
  const figures =
    rule.kind === 'limit'
      ? startsOf(knowledge, { kind: 'limit', id }).filter((each) => scene.voice.solved.has(each))
      : [];
  return { ...body(scene, figures, verdict), kind: 'verdict', topic: id, verdict };
}

/** What a value and a verdict have in common: the figures, what they rest on, and every rule that bears on them. */
function body(scene: Scene, ids: readonly string[], verdict?: Verdict): Omit<Reply, 'kind' | 'topic'> {
  const { voice, understood } = scene;
  const { knowledge, solved } = voice;
  const values = ids.map((id) => figureOf(id, voice)).filter((value) => value !== undefined);
  const rests = restsOn(solved, ids);
  const checks = checksOn(rests, voice);
  const assumed = [...assumedBy(ids, voice), ...unitsAssumed(scene)];
  const cautions = [...new Set(ids.flatMap((id) => knowledge.quantities.get(id)?.caution ?? []))].slice(0, 1);
  const working = workingOf(ids, voice);
  const shown = verdict ? checks.filter((check) => check.rule !== verdict.rule) : checks;
  return {
    values,
    checks,
    steps: stepsFor(
      scene,
      [...new Set(ids.slice(0, 1).flatMap((id) => knowledge.quantities.get(id)?.usedAt ?? []))].slice(0, 2),
    ),
    given: givenOf(understood.fresh),
    kept: keptOf(understood.facts, rests),
    ignored: ignoredIn(scene),
    assumed,
    working,
    causes: [],
    cards:
      scene.parts.cards?.linked(
        [
          ...(verdict ? [`limit/${verdict.rule}`, `practice/${verdict.rule}`] : []),
          ...ids.map((id) => `quantity/${id}`),
        ],
        voice,
      ) ?? [],
    layout: [],
    load: [],
    cautions: [...cautions, en.agencyFirst],
    next: [
      ...new Set(
        ids
          .flatMap((id) => knowledge.quantities.get(id)?.beside ?? [])
          .flatMap((id) => knowledge.quantities.get(id)?.asks ?? []),
      ),
    ].slice(0, 4),
    text: [
      textOf(scene, values, assumed, shown, verdict),
      ...(verdict ? [] : notesOn(ids.slice(0, 1), voice)),
      ...(understood.commands.has('how') ? workingLines(working) : []),
    ].join('\n'),
    rules: { version: knowledge.version },
    job: scene.job,
  };
}

const workingLines = (steps: readonly Working[]): string[] =>
  steps.map((step) => en.working(capital(step.formula), step.with, step.result));

/** A number typed without a unit, and what it was read as. */
function unitsAssumed({ understood, voice }: Scene): AssumedFact[] {
  return understood.fresh.flatMap((fact): AssumedFact[] => {
    if (!fact.unitAssumed || !('unit' in fact)) return [];
    const { quantity, number, unit } = fact;
    const record = voice.knowledge.quantities.get(quantity)!;
    const text = en.readAs(String(number), en.fact(record.title, say(record, toBase(number, unit), unit, true)));
    return [{ quantity, number, unit, rule: `quantity/${quantity}`, text }];
  });
}

function textOf(
  scene: Scene,
  values: readonly Value[],
  assumed: readonly AssumedFact[],
  checks: readonly Check[],
  verdict?: Verdict,
): string {
  const { voice } = scene;
  const line = (value: Value): string => lineOf(voice, value);
  const [first, ...beside] = values;
  const worst = checks.find(
    (check) => (check.status === 'stop' || check.status === 'caution') && !check.text.startsWith(en.generally('')),
  );
  const lines = verdict ? [verdict.text] : [first && line(first), from(voice, values), beside.map(line).join(' ')];
  return [...lines, assumed.length ? en.assumed(assumed.map(({ text }) => text)) : '', worst?.text]
    .filter(Boolean)
    .join('\n');
}

function lineOf(voice: Voice, value: Value): string {
  const record = voice.knowledge.quantities.get(value.quantity)!;
  const fact = voice.solved.get(value.quantity)!;
  return capital(en.figure(record.title, value.text, sayEnds(record, fact, value.unit)));
}

/** The facts given that the first value rests on, choices that were settled among them, in a sentence. */
function from(voice: Voice, values: readonly Value[]): string {
  const used = restsOn(
    voice.solved,
    values.slice(0, 1).map((value) => value.quantity),
  );
  const facts = [...used]
    .filter((id) => voice.isGiven(choiceOf(id) ?? id))
    .flatMap((id) => {
      const record = voice.knowledge.quantities.get(id);
      const settled = sayChoice(id, voice);
      // The unit of a figure is said with the figure.
      if (settled) return voice.knowledge.choices.get(settled.quantity)?.settledByUnitOf ? [] : [settled.text];
      return record ? [en.fact(record.title, say(record, voice.solved.get(id)!.value, voice.unit(id), true))] : [];
    });
  return facts.length ? en.from(facts) : '';
}
