import { toBase } from '../../calc/quantity.ts';
import { whatFollows } from '../../rules/start.ts';
import { type Fact, jobFacts, knownFrom, merge } from '../facts.ts';
import { emptyJob } from '../job.ts';
import { blank } from '../refusal.ts';
import type { Reply, TalkBook, TalkPatch, Value } from '../reply.ts';
import { talk as words } from '../wording/book-talk.en.ts';
import { type BookScene, bookAnswer, exact, reread, sheetIn } from './book-scene.ts';
import {
  isOfPatch,
  mostPatches,
  nextTalkLabel,
  patchFacts,
  patchOf,
  undone,
  withoutPatch,
  withPatch,
} from './talk-book.ts';
import { leftOf, listed } from './talk-sums.ts';
import { totalsOf } from './totals.ts';

/** Puts a patch on the job: the one said now, or the one that was talked about. */
export function added(scene: BookScene): Reply | undefined {
  const { engine, job, tell } = scene;
  const { book } = job;
  const understood = reread(scene);
  const { knowledge } = engine;
  const told = understood.fresh.filter(({ quantity }) => isOfPatch(knowledge, quantity));
  // A size said now is a patch of its own; else it is the one that was talked about.
  const own = (told.some((fact) => 'unit' in fact) ? told : understood.facts).filter(
    ({ quantity }) => isOfPatch(knowledge, quantity) && !quantity.startsWith('placed-') && quantity !== 'loads-placed',
  );
  if (own.length === 0)
    return bookAnswer(scene, book, {
      text: words.nothingToAdd,
      kind: 'clarify',
      topic: 'missing-fact',
      reason: 'missing-fact',
      clarify: { quantity: 'patch-length', text: words.nothingToAdd, choices: [] },
    });
  if (!scene.sheetOf && (book?.patches.length ?? 0) >= mostPatches)
    return bookAnswer(scene, book, {
      text: words.full(mostPatches),
      kind: 'unknown',
      topic: 'out-of-scope',
      reason: 'out-of-scope',
    });
  const wanted = scene.heard.label?.text;
  const label = wanted && !patchOf(book, wanted) ? wanted : nextTalkLabel(book);
  const patch: TalkPatch = { label, facts: jobFacts(own) };
  const next = withPatch(book, patch);
  const rest = understood.facts.filter(({ quantity }) => !isOfPatch(knowledge, quantity));
  const totals = totalsOf(engine, sheetIn(scene, next, rest));
  const one = totals.patches.find((each) => each.patch.label === label)!;
  const size = tell.size(own);
  const mass = one.figures['premix-mass'];
  const values = [
    mass && tell.value('premix-mass', mass),
    totals.sums['premix-order'] && tell.value('premix-order', totals.sums['premix-order']),
  ];
  return bookAnswer(
    scene,
    next,
    {
      text: [
        mass
          ? words.added(label, size, tell.words('premix-mass', mass.value))
          : words.addedOpen(label, size, tell.titles(one.missing)),
        totals.sums['premix-mass'] ? tell.soFar(totals) : '',
      ]
        .filter(Boolean)
        .join('\n'),
      values: values.filter((value): value is Value => value !== undefined),
      next: [words.next.total, words.next.list, words.next.undo],
    },
    rest,
  );
}

/** Says that there is no such patch. */
export function noPatch(scene: BookScene): Reply {
  const { heard, job } = scene;
  const have = (job.book?.patches ?? []).map(({ label }) => label);
  const named = [heard.label, ...heard.others].find((label) => label && !patchOf(job.book, label.text));
  const text = named ? words.noPatch(named.text, have) : words.which;
  return bookAnswer(scene, job.book, {
    text,
    kind: 'clarify',
    topic: 'missing-fact',
    reason: 'missing-fact',
    clarify: { quantity: 'patch-length', text, choices: [] },
  });
}

/** Tons or loads that went down on a patch: they add up. */
export function laid(scene: BookScene, patch: TalkPatch): Reply | undefined {
  const { engine, job, tell, heard } = scene;
  const { knowledge } = engine;
  const read = reread(scene);
  // What is told as tons comes before what a number of loads was taken for.
  const fresh = [...read.fresh].sort((a, b) => Number(a.unitAssumed ?? false) - Number(b.unitAssumed ?? false));
  const solved = whatFollows(
    knowledge,
    knownFrom(
      merge(
        patchFacts(patch, knowledge),
        fresh.filter(({ quantity }) => quantity !== 'premix-mass'),
      ),
    ),
  );
  const mass = fresh.find(
    (fact): fact is Fact & { number: number } =>
      'unit' in fact &&
      knowledge.quantities.get(fact.quantity)?.dimension === 'mass' &&
      fact.quantity !== 'truck-payload',
  );
  const down = mass && 'unit' in mass ? toBase(mass.number, mass.unit) : solved.get('placed-mass')?.value;
  if (!down) return undefined;
  if (heard.others.length > 0) return asked(scene, words.eachAlone);
  const payload = mass ? undefined : solved.get('truck-payload');
  if (payload && payload.assumed.length > 0)
    return asked(scene, words.byTickets(tell.words('truck-payload', payload.value)));
  const unit = tell.unit('placed-mass');
  const before = patch.laid ? toBase(patch.laid.number, patch.laid.unit) : 0;
  const length = fresh.find(({ quantity }) => quantity === 'placed-length');
  const next: TalkPatch = {
    ...patch,
    laid: tell.figure(before + down, unit),
    ...(length && 'unit' in length ? { laidTo: { number: length.number, unit: length.unit } } : {}),
  };
  const book = withPatch(job.book, next);
  const one = totalsOf(engine, sheetIn(scene, book)).patches.find((each) => each.patch.label === patch.label)!;
  const need = one.figures['premix-mass']?.value;
  const all = before + down;
  return bookAnswer(scene, book, {
    topic: 'tons-left',
    text: [
      words.laid(patch.label, tell.words('placed-mass', down), tell.words('placed-mass', all)),
      need === undefined
        ? ''
        : all > need
          ? words.overOnPatch(tell.words('premix-mass', need), tell.words('premix-mass', all - need))
          : words.leftOnPatch(tell.words('premix-mass', need), tell.words('tons-left', need - all)),
      tell.yieldLine(one),
      before > 0 ? words.takesBack : '',
    ]
      .filter(Boolean)
      .join('\n'),
    values: [
      ...(need === undefined ? [] : [tell.value('tons-left', exact(Math.max(0, need - all)))]),
      tell.value('placed-mass', exact(all)),
      ...(need === undefined ? [] : [tell.value('premix-mass', exact(need))]),
    ],
    next: [...(patch.done ? [] : [words.next.done(patch.label)]), words.next.left, words.next.list, words.next.undo],
  });
}

/** Asks for what a report lacks; nothing of it is written down. */
function asked(scene: BookScene, text: string): Reply {
  return bookAnswer(scene, scene.job.book, {
    text,
    kind: 'clarify',
    topic: 'missing-fact',
    reason: 'missing-fact',
    clarify: { quantity: 'placed-mass', text, choices: [] },
  });
}

/** Ticks patches off; with one of them unknown, none is. */
export function finished(scene: BookScene, patches: readonly TalkPatch[]): Reply {
  const text = patches.map(({ label, done }) => (done ? words.doneBefore(label) : words.done(label))).join(' ');
  let book = scene.job.book!;
  for (const patch of patches) if (!patch.done) book = withPatch(book, { ...patch, done: true });
  const left = leftOf(scene, book);
  return bookAnswer(scene, book, { ...left, text: `${text}\n${left.text}`, next: [words.next.left, words.next.undo] });
}

export function removed(scene: BookScene, book: TalkBook, patch: TalkPatch): Reply {
  const next = withoutPatch(book, patch);
  return bookAnswer(scene, next, { text: words.removed(patch.label), next: [words.next.undo, words.next.list] });
}

export function takenBack(scene: BookScene, book: TalkBook): Reply {
  const text = book.undo ? words.undone(book.undo.label) : words.nothingToUndo;
  const next = undone(book);
  return next.patches.length > 0
    ? { ...listed(scene, next), text: `${text}\n${listed(scene, next).text}` }
    : bookAnswer(scene, next, { text });
}

export function cleared(scene: BookScene, book: TalkBook): Reply {
  return {
    ...blank,
    kind: 'card',
    topic: 'start-over',
    text: words.cleared(book.patches.length),
    rules: { version: scene.engine.knowledge.version },
    job: emptyJob,
  };
}
