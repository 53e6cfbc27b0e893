import type { Engine } from '../engine.ts';
import { type Fact, givenOf, jobFacts } from '../facts.ts';
import { blank } from '../refusal.ts';
import type { Job, Reply, Request, TalkBook } from '../reply.ts';
import { type Understanding, understand } from '../understand.ts';
import { en } from '../wording/en.ts';
import type { HeardOfBook } from './hear.ts';
import { jobWith } from './talk-book.ts';
import type { Telling } from './telling.ts';

/** All that an answer about the book is made from. */
export interface BookScene {
  readonly engine: Engine;
  readonly request: Request;
  readonly understood: Understanding;
  readonly heard: HeardOfBook;
  /** The job as the last reply left it. */
  readonly job: Job;
  readonly tell: Telling;
}

/** A question with a part of it blanked: every other word keeps its place. */
export const without = (question: string, [start, end]: readonly [number, number]): string =>
  question.slice(0, start) + ' '.repeat(end - start) + question.slice(end);

/** The reply, with the job going on from here: facts of a patch stay in the book and leave the talk. */
export function bookAnswer(
  scene: BookScene,
  book: TalkBook | undefined,
  told: Partial<Reply> & { text: string },
  facts?: readonly Fact[],
  goal: string | undefined = scene.job.goal,
): Reply {
  const { understood, job, engine } = scene;
  const kept = facts ?? understood.facts.filter(({ fresh }) => !fresh);
  const next: Job = {
    v: 1,
    turn: understood.turn,
    facts: jobFacts(kept),
    ...(goal ? { goal } : {}),
    ...(job.stage ? { stage: job.stage } : {}),
    ...(understood.units ? { units: understood.units } : {}),
  };
  return {
    ...blank,
    kind: 'value',
    topic: 'premix-mass',
    // The number of a patch is no size of it.
    given: givenOf(reread(scene).fresh),
    cautions: [en.agencyFirst],
    rules: { version: engine.knowledge.version },
    ...told,
    job: jobWith(next, book),
  };
}

/** The same question read without the label, so that its number is not taken for a size. */
export function reread({ engine, request, job, heard, understood }: BookScene): Understanding {
  return heard.label
    ? understand(engine, { ...request, question: without(request.question, heard.label.at) }, job)
    : understood;
}

/** A figure without a range. */
export const exact = (value: number) => ({ value, low: value, high: value });
