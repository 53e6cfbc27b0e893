import type { Engine } from '../engine.ts';
import type { Job, Request, TalkPatch } from '../reply.ts';
import type { Understanding } from '../understand.ts';
import { heardOfBook } from './hear.ts';
import { isOfPatch, patchOf } from './talk-book.ts';
import { without } from './without.ts';

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
