import type { Reply, TalkBook } from '../reply.ts';
import { talk as words } from '../wording/book-talk.en.ts';
import { type BookScene, bookAnswer, exact } from './book-scene.ts';
import { talkSheet } from './talk-book.ts';
import { type Totals, totalsOf } from './totals.ts';

const totalsOn = ({ engine, understood }: BookScene, book: TalkBook): Totals =>
  totalsOf(engine, talkSheet(book, understood.facts, engine.knowledge));

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
