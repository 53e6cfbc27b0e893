import type { Engine } from '../engine.ts';
import { type Fact, givenOf, jobFacts } from '../facts.ts';
import { blank } from '../refusal.ts';
import type { Job, Reply, Request, TalkBook } from '../reply.ts';
import { type Understanding, understand } from '../understand.ts';
import { en } from '../wording/en.ts';
import type { HeardOfBook } from './hear.ts';
import type { Sheet } from './sheet.ts';
import { jobWith, talkSheet } from './talk-book.ts';
import type { Telling } from './telling.ts';
import { without } from './without.ts';

/** All that an answer about the book is made from. */
export interface BookScene {
  readonly engine: Engine;
  readonly request: Request;
  readonly understood: Understanding;
  readonly heard: HeardOfBook;
  /** The job as the last reply left it. */
  readonly job: Job;
  readonly tell: Telling;
  /** The sheet of a book that is not the talk's own: how it would stand with what is told now. */
  readonly sheetOf?: ((book: TalkBook) => Sheet) | undefined;
}

/** What the totals are worked from: the talk's own patches, or the whole of the job it is held on. */
export const sheetIn = ({ sheetOf, understood, engine }: BookScene, book: TalkBook, facts = understood.facts): Sheet =>
  sheetOf?.(book) ?? talkSheet(book, facts, engine.knowledge);

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

/** The same question read without the labels, so that no number of a patch is taken for a size. */
export function reread({ engine, request, job, heard, understood }: BookScene): Understanding {
  const { label, others } = heard;
  if (!label) return understood;
  const question = [label, ...others].reduce((text, { at }) => without(text, at), request.question);
  return understand(engine, { ...request, question }, job);
}

/** A figure without a range. */
export const exact = (value: number) => ({ value, low: value, high: value });
