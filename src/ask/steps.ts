import { restsOn } from '../calc/solve.ts';
import { type Entry, nextAfter, placeOf, readStage, sequence, stageText } from '../rules/procedure.ts';
import { work } from '../rules/work.ts';
import { askFor, clarifying } from './clarify.ts';
import { givenOf, keptOf } from './facts.ts';
import { ignoredIn } from './ignored.ts';
import { checksOn } from './judging.ts';
import { blank } from './refusal.ts';
import type { Check, GivenFact, Reply, Span, Step } from './reply.ts';
import { rulesNamed } from './rules-named.ts';
import type { Scene } from './scene.ts';
import { entryOf, type LiftSaid, liftSaid, type Said, stageSaid } from './step-stage.ts';
import { filler, liftsOf, type Viewed, viewStep } from './step-view.ts';
import { en } from './wording/en.ts';
import { assumedBy } from './working.ts';

/** What a question about the steps was read as. */
interface Asked {
  readonly scene: Scene;
  readonly lifts: number | undefined;
  readonly said: Said | undefined;
  readonly lift: LiftSaid | undefined;
  /** The step in hand, as the job carries it. */
  readonly at: Entry | undefined;
}

/**
 * Answers what a goal of kind `step` asks (see `workGoals`): the whole checklist, one step, what stands before or after one,
 * or what comes next once something is done. What is said to be done moves the stage of the job; asking alone does not.
 */
export function stepsReply(scene: Scene, id: string): Reply {
  const { sentence } = scene.understood;
  const asked: Asked = {
    scene,
    lifts: liftsOf(scene.voice),
    said: stageSaid(sentence),
    lift: liftSaid(sentence),
    at: readStage(scene.job.stage),
  };
  const [frame, step] = framed(id);
  if (frame === 'whole') return whole(asked);
  if (frame === 'before') return before(asked, { id: step });
  if (frame === 'after') return after(asked, entryOf(step, asked.lift?.lift, asked.at, asked.lifts), false);
  if (frame === 'one') return one(asked, step);
  return next(asked, frame === 'done');
}

/** The short steps of the stages where figures are used, to go with an answer that gives them. */
export function stepsFor(scene: Scene, stages: readonly string[]): Step[] {
  return stages.flatMap((id) => {
    const record = work.steps.get(id);
    return record ? [viewStep(record, { id }, scene.voice).step] : [];
  });
}

function framed(id: string): [frame: string, step: string] {
  if (id === 'whole' || id === 'next' || id === 'done') return [id, ''];
  const [frame, ...rest] = id.split('-');
  const step = rest.join('-');
  return work.steps.has(step) && !work.steps.has(id) ? [frame!, step] : ['one', id];
}

function next(asked: Asked, isDone: boolean): Reply {
  const { scene, said, lift, at, lifts } = asked;
  if (said) {
    const entry = entryOf(said.step, lift?.lift, at, lifts);
    if (!entry) return noSuchLift(asked);
    if (said.done) return after(asked, entry, true);
    return told(moved(asked, entry), [entry], en.steps.one);
  }
  if (at) return after(asked, at, isDone);
  const choices = en.steps.whereChoices.map(([text, send]) => ({ text, send }));
  return clarifying(scene, 'stage', 'missing-fact', { quantity: 'stage', text: en.steps.where, choices }, 'stage');
}

/** What follows an entry; the stage moves there once the entry is done, unless something must be so first and is not. */
function after(asked: Asked, entry: Entry | undefined, isDone: boolean): Reply {
  if (!entry) return noSuchLift(asked);
  const found = nextAfter(entry, asked.lifts);
  if (found === 'needs-lift-count' && !isDone && !asked.at) return either(asked, entry);
  if (found === 'needs-lift-count') return askFor(moved(asked, isDone ? entry : undefined).scene, 'lift-count');
  if (found === 'no-such-stage')
    return noSuchLift({ ...asked, lift: asked.lift ?? { lift: entry.lift ?? 0, from: [0, 0] } });
  if (found === 'done') return { ...body(asked, []), topic: entry.id, text: en.steps.jobDone, next: [] };
  const unmet = view(asked, found.entry).unmet.length > 0;
  return told(isDone ? moved(asked, unmet ? entry : found.entry) : asked, [found.entry], en.steps.next);
}

/** Without the number of lifts: what follows, whether or not one lift is left. */
function either(asked: Asked, { id }: Entry): Reply {
  const [next, last] = [id === 'windrow' ? 'first-lift' : 'next-lift', 'finish-lift'].map((step) =>
    view(asked, { id: step }),
  );
  const shown = told(asked, [next!.entry], (title, text) => en.steps.either(title, last!.record.title, text));
  return { ...shown, steps: [next!.step, last!.step] };
}

function one(asked: Asked, step: string): Reply {
  const entry = entryOf(step, asked.lift?.lift, asked.at, asked.lifts);
  return entry ? told(asked, [entry], en.steps.one, true) : noSuchLift(asked);
}

function before(asked: Asked, wanted: Entry): Reply {
  const entries = sequence(asked.lifts);
  const place = placeOf(wanted, entries);
  const reached = asked.at ? Math.max(placeOf(asked.at, entries), 0) : 0;
  const list = entries.slice(reached < place ? reached : 0, Math.max(place, 0));
  const title = work.steps.get(wanted.id)!.title;
  if (list.length === 0) return told(asked, entries.slice(0, 1), () => en.steps.first(title));
  return listed(asked, list, wanted.id, en.steps.allBefore(title));
}

function whole(asked: Asked): Reply {
  const { lifts } = asked;
  const head = [en.steps.checklist(lifts?.toString()), ...(lifts === undefined ? [en.steps.liftsUnknown] : [])].join(
    ' ',
  );
  return listed(asked, sequence(lifts), 'checklist', head);
}

function listed(asked: Asked, entries: readonly Entry[], topic: string, head: string): Reply {
  const views = entries.map((entry) => view(asked, entry));
  const lines = views.map(({ step }, i) => en.steps.item(i + 1, step.title));
  return { ...body(asked, views), topic, text: [head, ...lines].join('\n') };
}

/** One step told in full, with what to check and what to watch. */
function told(
  asked: Asked,
  entries: readonly Entry[],
  worded: (title: string, text: string) => string,
  withCraft = false,
): Reply {
  const [shown] = entries.map((entry) => view(asked, entry));
  const { step, record, entry } = shown!;
  const fill = filler(entry, asked.scene.voice);
  const craft = withCraft ? (record.craft ?? []).map(({ title, text }) => en.steps.craft(title, fill(text))) : [];
  const checks = rulesNamed(asked.scene, record.rules);
  const worst = checks.find(({ status }) => status === 'stop' || status === 'caution');
  const text = [
    worded(step.title, step.text),
    ...craft,
    en.steps.check(step.checks),
    withCraft ? en.steps.good(fill(record.good)) : '',
    ...step.cautions.slice(0, 1).map(en.steps.watch),
    worst?.text,
  ];
  return { ...body(asked, [shown!], checks), topic: record.id, text: text.filter(Boolean).join('\n') };
}

const view = ({ scene }: Asked, entry: Entry): Viewed => viewStep(work.steps.get(entry.id)!, entry, scene.voice);

/** The scene with the stage of its job set. */
function moved(asked: Asked, stage: Entry | undefined): Asked {
  if (!stage) return asked;
  return { ...asked, scene: { ...asked.scene, job: { ...asked.scene.job, stage: stageText(stage) } } };
}

function noSuchLift({ scene, lift, lifts = 0 }: Asked): Reply {
  const text = en.steps.noSuchLift(typeof lift?.lift === 'number' ? lift.lift : 0, lifts);
  return clarifying(scene, 'lift-count', 'conflict', { quantity: 'lift-count', text, choices: [] });
}

function body({ scene, said, lift }: Asked, views: readonly Viewed[], named?: readonly Check[]): Reply {
  const { voice, understood, engine } = scene;
  const figures = [...new Set(views.flatMap((shown) => shown.figures))];
  const rests = restsOn(voice.solved, figures);
  const used: Span[] = lift ? [lift.from] : [];
  const stage: GivenFact[] = said ? [{ quantity: 'stage', choice: said.step }] : [];
  return {
    ...blank,
    kind: 'steps',
    topic: 'checklist',
    text: '',
    steps: views.map(({ step }) => step),
    checks: named ?? checksOn(rests, voice),
    given: [...givenOf(understood.fresh), ...stage],
    kept: keptOf(understood.facts, rests),
    ignored: ignoredIn(scene, used),
    assumed: assumedBy(figures, voice),
    cautions: [...(views[0]?.step.cautions.slice(0, 1) ?? []), en.offTheRoad, en.agencyFirst],
    next: [en.steps.asks.done, en.steps.asks.next, en.steps.asks.whole],
    rules: { version: engine.knowledge.version },
    job: scene.job,
  };
}
