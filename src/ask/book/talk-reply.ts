import type { Engine } from '../engine.ts';
import type { Job, Reply, Request } from '../reply.ts';
import type { Understanding } from '../understand.ts';
import type { BookScene } from './book-scene.ts';
import { heardOfBook } from './hear.ts';
import { paceReply } from './pace-reply.ts';
import { added, cleared, finished, laid, noPatch, removed, takenBack } from './talk-acts.ts';
import { isOfPatch, patchOf } from './talk-book.ts';
import { listed, listedOf, whatIsLeft, wholeJob } from './talk-sums.ts';
import { telling } from './telling.ts';
import { yieldReply } from './yield-reply.ts';

/** Whose book a talk is held on, where that is not its own. */
export type SheetOfBook = BookScene['sheetOf'];

/**
 * Answers what is said of the job's patches: put on, laid, done, what is left, what it all comes to. Undefined for
 * anything else. What asks of patches together needs some on the job; else it is a question like any other.
 */
export function bookReply(
  engine: Engine,
  request: Request,
  job: Job,
  understood: Understanding,
  sheetOf?: SheetOfBook,
): Reply | undefined {
  const heard = heardOfBook(understood.sentence, engine);
  const { command, label, others, progress, pace } = heard;
  const scene: BookScene = { engine, request, understood, heard, job, tell: telling(engine, understood), sheetOf };
  if (progress) return yieldReply(scene, progress, pace?.loads);
  const paced = pace && paceReply(scene, pace);
  if (paced) return paced;
  const { book } = job;
  const labels = [label, ...others].filter((each) => each !== undefined);
  const named = labels.map(({ text }) => patchOf(book, text)).filter((patch) => patch !== undefined);
  const [patch] = named.length === labels.length ? named : [];
  // A size said with it makes it a question of that size.
  const ofAll = book && !label && book.patches.length > 0 && !isSized(scene) ? book : undefined;
  switch (command) {
    case 'add':
      return added(scene);
    case 'laid':
      return patch ? laid(scene, patch) : noPatch(scene);
    case 'done':
      return patch ? finished(scene, named) : label ? noPatch(scene) : undefined;
    case 'remove':
      return book && label ? (patch ? removed(scene, book, patch) : noPatch(scene)) : undefined;
    case 'undo':
      return book ? takenBack(scene, book) : undefined;
    case 'clear':
      return book && book.patches.length > 0 ? cleared(scene, book) : undefined;
    case 'left':
      return ofAll && whatIsLeft(scene, ofAll);
    case 'total':
      return ofAll && wholeJob(scene, ofAll);
    case 'list':
      return ofAll && listed(scene, ofAll);
    default:
      return book && patch && named.length > 1
        ? listedOf(
            scene,
            book,
            named.map((each) => each.label),
          )
        : undefined;
  }
}

const isSized = ({ engine: { knowledge }, understood: { fresh } }: BookScene): boolean =>
  fresh.some((fact) => 'unit' in fact && isOfPatch(knowledge, fact.quantity));
