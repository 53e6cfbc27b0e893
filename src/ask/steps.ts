import { type Entry, nextAfter, placeOf, readStage, sequence, stageText } from '../rules/procedure.ts';
import { work } from '../rules/work.ts';
import { askFor } from './clarify.ts';
import { clarifying } from './clarifying.ts';
import { readJob } from './job.ts';
import type { Reply, Step } from './reply.ts';
import type { Scene } from './scene.ts';
import { entryOf, liftSaid, stageSaid, stepsNamed } from './step-stage.ts';
import { liftsOf, viewStep } from './step-view.ts';
import { type Asked, body, listed, told, view } from './steps-told.ts';
import { en } from './wording/en.ts';

/**
 * Answers what a goal of kind `step` asks (see `workGoals`): the whole checklist, one step, what stands before or after one,
 * or what comes next once something is done. What is said to be done moves the stage of the job; asking alone does not.
 */
export function stepsReply(scene: Scene, id: string): Reply {
  const { sentence } = scene.understood;
  const lift = liftSaid(sentence);
  const asked: Asked = {
    scene,
    lifts: liftsOf(scene.voice),
    said: stageSaid(sentence),
    lift,
    at: readStage(scene.job.stage),
  };
  const [frame, step] = framed(id);
  if (frame === 'whole') return whole(asked);
  if (frame === 'before') return before(asked, { id: step });
  if (frame === 'after') return after(asked, entryOf(step, lift?.lift, asked.at, asked.lifts), false);
  if (frame === 'rest') return rest(asked, step ? { id: step } : asked.at);
  if (frame === 'between') return between(asked, stepsNamed(sentence));
  if (frame === 'skip') return kept(asked, step);
  if (frame === 'one') return one(asked, step);
  return scene.understood.goalKept && !asked.said && frame === 'done'
    ? resumed(asked, step)
    : next(asked, frame === 'done');
}

/** The short steps of the stages where figures are used, to go with an answer that gives them. */
export function stepsFor(scene: Scene, stages: readonly string[]): Step[] {
  return stages.flatMap((id) => {
    const record = work.steps.get(id);
    return record ? [viewStep(record, { id }, scene.voice).step] : [];
  });
}

function framed(id: string): [frame: string, step: string] {
  if (id === 'whole' || id === 'next' || id === 'rest' || id === 'done') return [id, ''];
  const [frame, ...rest] = id.split('-');
  const step = rest.join('-');
  return work.steps.has(step) && !work.steps.has(id) ? [frame!, step] : ['one', id];
}

function next(asked: Asked, isDone: boolean): Reply {
  const { scene, said, lift, at, lifts } = asked;
  if (said) {
    const entry = entryOf(said.step, lift?.lift, at, lifts);
    if (!entry) return noSuchLift(asked);
    return said.done ? after(asked, entry, true) : told(moved(asked, entry), entry, en.steps.one);
  }
  const report = reported(scene);
  if (at && report && !isDone) return told(withGoal(asked, report), at, en.steps.next);
  if (at) return after(asked, at, isDone);
  const shown = shownBefore(scene);
  if (shown) return after(asked, shown, isDone);
  const choices = en.steps.whereChoices.map(([text, send]) => ({ text, send }));
  return clarifying(scene, 'stage', 'missing-fact', { quantity: 'stage', text: en.steps.where, choices }, 'stage');
}

/** The report that the turn before was, where it only told what is done: what comes next is then what was told in answer, however often it is asked. */
function reported({ request }: Scene): string | undefined {
  const goal = readJob(request.job)?.goal;
  return goal?.startsWith('step/done-') ? goal : undefined;
}

/** The one step that the turn before told of: "what's first", and then "done". */
function shownBefore({ request }: Scene): Entry | undefined {
  const id = readJob(request.job)?.goal?.replace(/^step\//, '');
  return id && work.steps.has(id) ? { id } : undefined;
}

/**
 * A further fact after "done with …": when the job still stands at what was done, because something was missing, it is tried
 * again; otherwise the step in hand is told with the new fact. Nothing is counted as done twice.
 */
function resumed(asked: Asked, step: string): Reply {
  const { at } = asked;
  if (!at) return next(asked, false);
  return at.id === step ? after(asked, at, true) : told(asked, at, en.steps.one);
}

/** What follows an entry; the stage moves there once the entry is done, unless something must be so first and is not. */
function after(asked: Asked, entry: Entry | undefined, isDone: boolean): Reply {
  if (!entry) return noSuchLift(asked);
  const found = nextAfter(entry, asked.lifts);
  // After the row a lift is laid, be it the only one; after a rolling, what comes hangs on the lifts.
  if (found === 'needs-lift-count')
    return asked.said && entry.id === 'windrow'
      ? either(isDone ? waiting(asked, entry) : asked, entry)
      : isDone || asked.at
        ? askFor((isDone ? waiting(asked, entry) : asked).scene, 'lift-count')
        : either(asked, entry);
  if (found === 'no-such-stage')
    return noSuchLift({ ...asked, lift: asked.lift ?? { lift: entry.lift ?? 0, from: [0, 0] } });
  if (found === 'done') return { ...body(asked, []), topic: entry.id, text: en.steps.jobDone, next: [] };
  const isMet = view(asked, found.entry).unmet.length === 0;
  return told(isDone ? (isMet ? moved(asked, found.entry) : waiting(asked, entry)) : asked, found.entry, en.steps.next);
}

/** Without the number of lifts: what follows, whether or not one lift is left. */
function either(asked: Asked, { id }: Entry): Reply {
  const [more, last] = [id === 'windrow' ? 'first-lift' : 'next-lift', 'finish-lift'].map((step) =>
    view(asked, { id: step }),
  );
  const shown = told(asked, more!.entry, (title, text) => en.steps.either(title, last!.record.title, text));
  return { ...shown, steps: [more!.step, last!.step] };
}

function one(asked: Asked, step: string): Reply {
  const entry = entryOf(step, asked.lift?.lift, asked.at, asked.lifts);
  return entry ? told(asked, entry, en.steps.one, true) : noSuchLift(asked);
}

/** Whether a step may be left out: why it is one, and the step itself. */
function kept(asked: Asked, step: string): Reply {
  const { because } = work.steps.get(step)!;
  return told(asked, entryOf(step, asked.lift?.lift, asked.at, asked.lifts) ?? { id: step }, (title, text) =>
    en.steps.kept(title, because, text),
  );
}

function before(asked: Asked, wanted: Entry): Reply {
  const entries = sequence(asked.lifts);
  const place = placeOf(wanted, entries);
  const reached = asked.at ? placeOf(asked.at, entries) : 0;
  const list = entries.slice(reached > 0 && reached < place ? reached : 0, Math.max(place, 0));
  const { title } = work.steps.get(wanted.id)!;
  if (list.length === 0) return told(asked, entries[0]!, () => en.steps.first(title));
  return listed(asked, list, wanted.id, en.steps.allBefore(title));
}

/** All that follows a step, or the step the job is at; where nothing tells how far it is, that is asked. */
function rest(asked: Asked, from: Entry | undefined): Reply {
  if (!from) return next(asked, false);
  const entries = sequence(asked.lifts);
  const place = lastPlace(entries, entryOf(from.id, asked.lift?.lift, asked.at, asked.lifts) ?? from);
  const list = entries.slice(place + 1);
  if (place < 0 || list.length === 0) return next({ ...asked, at: from }, false);
  return listed(asked, list, from.id, en.steps.allAfter(work.steps.get(from.id)!.title));
}

/** What stands between the first and the last of the steps named. */
function between(asked: Asked, named: readonly string[]): Reply {
  const entries = sequence(asked.lifts);
  const [from, to] = [named[0]!, named.at(-1)!];
  const start = lastPlace(entries, { id: from });
  const end = entries.findIndex(({ id }, at) => at > start && id === to);
  const list = entries.slice(start + 1, Math.max(end, 0));
  if (list.length === 0) return after(asked, { id: from }, false);
  return listed(asked, list, from, en.steps.allBetween(work.steps.get(from)!.title, work.steps.get(to)!.title));
}

/** Where a step stands, the lift it is named with or else the last time it comes. */
const lastPlace = (entries: readonly Entry[], entry: Entry): number =>
  entry.lift === undefined ? entries.findLastIndex(({ id }) => id === entry.id) : placeOf(entry, entries);

function whole(asked: Asked): Reply {
  const { lifts } = asked;
  const head = [en.steps.checklist(lifts?.toString()), ...(lifts === undefined ? [en.steps.liftsUnknown] : [])].join(
    ' ',
  );
  return listed(asked, sequence(lifts), 'checklist', head);
}

/** The scene with the stage of its job set. */
function moved(asked: Asked, stage: Entry): Asked {
  return { ...asked, scene: { ...asked.scene, job: { ...asked.scene.job, stage: stageText(stage) } } };
}

/** The scene with its job held at what was done, until what is missing is said. */
function waiting(asked: Asked, done: Entry): Asked {
  return withGoal(moved(asked, done), `step/done-${done.id}`);
}

function withGoal(asked: Asked, goal: string): Asked {
  return { ...asked, scene: { ...asked.scene, job: { ...asked.scene.job, goal } } };
}

function noSuchLift({ scene, lift, lifts = 0 }: Asked): Reply {
  const text = en.steps.noSuchLift(typeof lift?.lift === 'number' ? lift.lift : 0, lifts);
  return clarifying(scene, 'lift-count', 'conflict', { quantity: 'lift-count', text, choices: [] });
}
