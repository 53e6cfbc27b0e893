import type { Engine } from '../engine.ts';
import type { Job, Reply, Request, TalkPatch } from '../reply.ts';
import type { Understanding } from '../understand.ts';
import { type BookScene, without } from './book-scene.ts';
import { heardOfBook } from './hear.ts';
import { added, cleared, finished, laid, noPatch, removed, takenBack } from './talk-acts.ts';
import { isOfPatch, patchOf } from './talk-book.ts';
import { listed, whatIsLeft, wholeJob } from './talk-sums.ts';
import { telling } from './telling.ts';
import { yieldReply } from './yield-reply.ts';

/**
 * Answers what is said of the job's patches: put on, laid, done, what is left, what it all comes to. Undefined for
 * anything else. What asks of patches together needs some on the job; else it is a question like any other.
 */
export function bookReply(engine: Engine, request: Request, job: Job, understood: Understanding): Reply | undefined {
  const heard = heardOfBook(understood.sentence, engine);
  const { command, label, progress } = heard;
  const scene: BookScene = { engine, request, understood, heard, job, tell: telling(engine, understood) };
  if (progress) return yieldReply(scene, progress);
  const { book } = job;
  const patch = label && patchOf(book, label.text);
  switch (command) {
    case 'add':
      return added(scene);
    case 'laid':
      return patch ? laid(scene, patch) : noPatch(scene);
    case 'done':
      return patch ? finished(scene, patch) : label ? noPatch(scene) : undefined;
    case 'remove':
      return book && label ? (patch ? removed(scene, book, patch) : noPatch(scene)) : undefined;
    case 'undo':
      return book ? takenBack(scene, book) : undefined;
    case 'clear':
      return book && book.patches.length > 0 ? cleared(scene, book) : undefined;
    case 'left':
      return book && !label && book.patches.length > 0 ? whatIsLeft(scene, book) : undefined;
    case 'total':
      return book && !label && book.patches.length > 0 ? wholeJob(scene, book) : undefined;
    case 'list':
      return book && !label && book.patches.length > 0 ? listed(scene, book) : undefined;
    default:
      return undefined;
  }
}

/** The question without the label of a patch, and the job with that patch's facts in it: "how many tons for patch 3". */
export function aboutPatch(
  engine: Engine,
  request: Request,
  job: Job,
  understood: Understanding,
): { request: Request; job: Job; patch: TalkPatch } | undefined {
  const { label } = heardOfBook(understood.sentence, engine);
  const patch = label && patchOf(job.book, label.text);
  if (!label || !patch) return undefined;
  const facts = [...job.facts.filter(({ quantity }) => !isOfPatch(engine.knowledge, quantity)), ...patch.facts];
  return { request: { ...request, question: without(request.question, label.at) }, job: { ...job, facts }, patch };
}
