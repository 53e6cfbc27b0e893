import type { Reply, Request, UnitSystem } from '../reply.ts';
import type { Entry } from './entry.ts';

/**
 * The earlier questions of a page. They travel instead of their answers: the engine gives the same answer to the same
 * question and job, so the sheets are worked out again, and nothing that could be forged is ever shown as ours.
 */
export interface Talk {
  /** Number of the first question kept here; those before it have left the page. */
  readonly first: number;
  /** The job as it stood before that question. */
  readonly start?: unknown;
  readonly turns: readonly Turn[];
  /** Rules that answered, so that a change of the rules between two questions can be said. */
  readonly version: string;
}

export interface Turn {
  readonly question: string;
  readonly units?: UnitSystem;
}

type Ask = (request: Request) => Reply;

/** Earlier questions that travel with the page, and what they may weigh together, in characters. */
export const earlierLimit = { questions: 20, characters: 8000 } as const;

/** The sheets of a talk, oldest first: each question asked again with the job the one before it left. */
export function replay(ask: Ask, talk: Talk): Entry[] {
  let job = talk.start;
  return talk.turns.map((turn, at) => {
    const reply = ask({ ...turn, ...(job === undefined ? {} : { job }) });
    job = reply.job;
    return { number: talk.first + at, ...turn, reply };
  });
}

/** The talk to send with the next question: what is on the page, less the oldest where it grows too long. */
export function talkOf(entries: readonly Entry[], before: Pick<Talk, 'first' | 'start'>, version: string): Talk {
  // What lies between two numbers was said on a job, and is written there: asked again, it would be written twice.
  let kept = entries.filter(({ number }) => Number.isInteger(number));
  let start = before.start;
  while (kept.length > earlierLimit.questions || length(kept) > earlierLimit.characters) {
    start = kept[0]?.reply.job;
    kept = kept.slice(1);
  }
  const turns = kept.map(({ question, units }) => ({ question, ...(units ? { units } : {}) }));
  return { first: kept[0]?.number ?? before.first, ...(start === undefined ? {} : { start }), turns, version };
}

const length = (entries: readonly Entry[]) => entries.reduce((sum, { question }) => sum + question.length, 0);
