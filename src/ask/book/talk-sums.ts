import type { Reply, TalkBook } from '../reply.ts';
import { talk as words } from '../wording/book-talk.en.ts';
import { type BookScene, bookAnswer, exact, sheetIn } from './book-scene.ts';
import { type Totals, totalsOf } from './totals.ts';

const totalsOn = (scene: BookScene, book: TalkBook): Totals => totalsOf(scene.engine, sheetIn(scene, book));

/** What is left to lay, in words and figures. */
export function leftOf(scene: BookScene, book: TalkBook): Partial<Reply> & { text: string } {
  const totals = totalsOn(scene, book);
  const { tell } = scene;
  const open = totals.patches.filter(({ patch }) => !patch.done);
  if (open.length === 0)
    return { text: words.allDone, topic: 'tons-left', values: [tell.value('tons-left', exact(0))] };
  const lines = [
    words.left(
      open.length,
      open.map(({ patch }) => patch.label),
      tell.words('tons-left', totals.left.mass),
    ),
    totals.laid > 0 ? words.laidSoFar(tell.words('placed-mass', totals.laid), totals.patches.length - open.length) : '',
    tell.notIn(totals.open.filter(({ patch }) => !patch.done)),
  ];
  return {
    text: lines.filter(Boolean).join('\n'),
    topic: 'tons-left',
    values: [tell.value('tons-left', exact(totals.left.mass))],
  };
}

export const whatIsLeft = (scene: BookScene, book: TalkBook): Reply =>
  bookAnswer(scene, book, { ...leftOf(scene, book), next: [words.next.total, words.next.list] });

export function wholeJob(scene: BookScene, book: TalkBook): Reply {
  const totals = totalsOn(scene, book);
  return bookAnswer(scene, book, { ...scene.tell.whole(totals), next: [words.next.left, words.next.list] });
}

export function listed(scene: BookScene, book: TalkBook): Reply {
  const totals = totalsOn(scene, book);
  const { tell } = scene;
  const lines = totals.patches.map((each) => tell.line(each));
  const mass = totals.sums['premix-mass'];
  return bookAnswer(scene, book, {
    text: [...lines, mass ? tell.soFar(totals) : ''].filter(Boolean).join('\n'),
    values: mass ? [tell.value('premix-mass', mass)] : [],
    next: [words.next.left, words.next.total],
  });
}

/** Several patches by their labels, each with its tons, and the tons of all of them. */
export function listedOf(scene: BookScene, book: TalkBook, labels: readonly string[]): Reply {
  const { tell } = scene;
  const wanted = new Set(labels.map((label) => label.toLowerCase()));
  const patches = totalsOn(scene, book).patches.filter(({ patch }) => wanted.has(patch.label.toLowerCase()));
  const open = patches.filter(({ figures }) => !figures['premix-mass']);
  const mass = patches.reduce((sum, { figures }) => sum + (figures['premix-mass']?.value ?? 0), 0);
  return bookAnswer(scene, book, {
    text: [
      ...patches.map((each) => tell.line(each)),
      words.sumOf(
        patches.map(({ patch }) => patch.label),
        tell.words('premix-mass', mass),
      ),
      tell.notIn(open),
    ]
      .filter(Boolean)
      .join('\n'),
    values: [tell.value('premix-mass', exact(mass))],
    next: [words.next.left, words.next.total],
  });
}
