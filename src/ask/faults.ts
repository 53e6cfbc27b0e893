import { restsOn } from '../calc/solve.ts';
import { holds, settled } from '../rules/decide.ts';
import { optionFact } from '../rules/knowledge.ts';
import type { FaultCause, FaultRecord } from '../rules/shapes-work.ts';
import { work } from '../rules/work.ts';
import { figuresIn } from './clauses.ts';
import { isHeard } from './cue.ts';
import { givenOf, keptOf } from './facts.ts';
import { ignoredIn } from './ignored.ts';
import { blank } from './refusal.ts';
import { repairReply } from './repairs.ts';
import type { Cause, Clarify, Reply } from './reply.ts';
import { rulesNamed } from './rules-named.ts';
import { capital, saySource } from './say.ts';
import type { Scene } from './scene.ts';
import { filler } from './step-view.ts';
import { tradeCue } from './trade-cue.ts';
import { en } from './wording/en.ts';
import { assumedBy } from './working.ts';

/**
 * Answers what went wrong in the mat: the causes in order with their remedies, what to do now and next time. Where a look-alike
 * is as likely, the one question that tells them apart is asked with it; its answer may lead to another fault or to a repair.
 */
export function faultReply(scene: Scene, id: string): Reply {
  const record = work.faults.get(id)!;
  const led = ledTo(scene, record);
  if (led && 'defect' in led)
    return repairReply(withGoal(scene, `defect/${led.defect}`), { kind: 'defect', id: led.defect });
  if (led) return told(withGoal(scene, `fault/${led.fault}`), work.faults.get(led.fault)!);
  return told(scene, record);
}

const withGoal = (scene: Scene, goal: string): Scene => ({ ...scene, job: { ...scene.job, goal } });

/** Where the settled look-alike leads, when it is not this fault. */
function ledTo({ voice }: Scene, { apart }: FaultRecord): { fault: string } | { defect: string } | undefined {
  const option = apart && settled(apart.by, voice.solved);
  return option === undefined ? undefined : apart?.leads?.[option];
}

function told(scene: Scene, record: FaultRecord): Reply {
  const { voice, understood, engine } = scene;
  const fill = filler({ id: record.id }, voice);
  const kept = record.causes.filter(({ when }) => !when || holds(when, voice.solved) !== false);
  const causes = kept.map(
    (cause): Cause => ({
      text: capital(fill(cause.text)),
      remedy: capital(fill(cause.remedy)),
      rule: cause.rule ?? `fault/${record.id}`,
    }),
  );
  const clarify = question(scene, record);
  const figures = figuresOf(kept).filter((name) => voice.solved.has(name));
  const rests = new Set([...restsOn(voice.solved, figures), ...choicesOf(scene, record)]);
  const checks = rulesNamed(
    scene,
    kept.flatMap(({ rule }) => rule ?? []),
  );
  const text = [
    en.fault.found(capital(record.title), record.seen),
    clarify?.text,
    en.fault.causes,
    ...causes.map(({ text, remedy }, i) => en.fault.cause(i + 1, text, remedy)),
    en.fault.now(fill(record.now)),
    en.fault.nextTime(fill(record.nextTime)),
    record.caution ? en.steps.watch(record.caution) : '',
    checks.find(({ status }) => status === 'stop' || status === 'caution')?.text,
    en.sources(record.sources.map(saySource)),
  ];
  return {
    ...blank,
    kind: 'fault',
    topic: record.id,
    text: text.filter(Boolean).join('\n'),
    causes,
    checks,
    given: givenOf(understood.fresh),
    kept: keptOf(understood.facts, rests),
    ignored: ignoredIn(scene),
    assumed: assumedBy(figures, voice),
    ...(clarify ? { clarify } : {}),
    cautions: [...(record.caution ? [record.caution] : []), en.offTheRoad, en.agencyFirst],
    next: [en.steps.asks.next],
    rules: { version: engine.knowledge.version },
    job: clarify ? { ...scene.job, asked: clarify.quantity } : scene.job,
  };
}

/** The question that tells look-alikes apart, while it is unsettled and the words leave it open. */
function question({ voice, understood }: Scene, { apart }: FaultRecord): Clarify | undefined {
  if (!apart?.by.question || settled(apart.by, voice.solved) !== undefined) return undefined;
  if (apart.heard && !apart.heard.some((cue) => isHeard(tradeCue(cue), understood.sentence))) return undefined;
  const choices = apart.by.options.map(({ title }) => ({ text: capital(title), send: title }));
  return { quantity: apart.by.id, text: apart.by.question.text, choices };
}

/** Quantities named in the words of causes. */
const figuresOf = (causes: readonly FaultCause[]): string[] =>
  causes.flatMap(({ text, remedy }) => [text, remedy].flatMap(figuresIn));

/** Settled choices the answer rests on. */
function choicesOf({ voice }: Scene, { apart }: FaultRecord): string[] {
  const option = apart && settled(apart.by, voice.solved);
  return option === undefined ? [] : [optionFact(apart!.by.id, option)];
}
