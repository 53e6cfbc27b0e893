import { knownJob } from '../ask/ask.ts';
import type { Job } from '../ask/reply.ts';
import type { Entry } from '../ask/views/entry.ts';
import { askPage } from '../ask/views/page.tsx';
import { replay, type Talk, talkOf } from '../ask/views/talk.ts';
import { page as wording } from '../ask/wording/page.en.ts';
import type { Doors } from './doors.ts';
import { dress } from './dress.ts';
import type { Form } from './form.ts';
import { questionLimit } from './limits.ts';
import { readTalk } from './talk.ts';
import { en } from './wording/en.ts';

interface Outcome {
  readonly html: string;
  /** False when what was typed could not be asked; it is still in the box. */
  readonly ok: boolean;
}

/** The page that follows on what a form sent: the conversation so far and, when `asking`, the answer to its question. */
export function pageAfter(form: Form, asking: boolean, { ask, version }: Doors): Outcome {
  const { talk, lost } = talkIn(form, version);
  const earlier = replay(ask, talk);
  const before = earlier.at(-1)?.reply.job ?? form.job;
  const question = form.send ?? form.typed;
  const puttingBack = form.change !== undefined;
  const error = asking && !puttingBack ? errorIn(question) : undefined;
  const fresh = asking && !puttingBack && !error ? [answered(question, before, form, talk, ask)] : [];
  const entries = [...earlier, ...fresh];
  const job = fresh[0]?.reply.job ?? knownJob(before);
  const next = talkOf(entries, talk, version);
  const html = askPage({
    entries,
    job,
    units: form.units,
    draft: draftAfter(form, fresh.length > 0),
    error,
    notices: [
      lost && wording.notices.lost,
      talk.version !== version && wording.notices.rulesChanged,
      next.first > 1 && wording.notices.left(next.first - 1),
    ].filter((notice) => notice !== false),
    carried: carriedBy(next, job),
    ticks: form.ticks,
    version,
    dress,
  });
  return { html, ok: error === undefined };
}

/** The earlier questions; where there are none that can be read, the page goes on from the job alone. */
function talkIn({ talk: text, job }: Form, version: string): { talk: Talk; lost: boolean } {
  const talk = text === undefined ? undefined : readTalk(text);
  if (talk) return { talk, lost: false };
  return {
    talk: { first: 1, ...(job === undefined ? {} : { start: job }), turns: [], version },
    lost: text !== undefined,
  };
}

function errorIn(question: string): string | undefined {
  if (question.trim() === '') return en.questionMissing;
  return question.length > questionLimit ? en.questionTooLong(questionLimit) : undefined;
}

function answered(question: string, job: unknown, { units }: Form, talk: Talk, ask: Doors['ask']): Entry {
  const turn = { question, ...(units ? { units } : {}) };
  return {
    number: talk.first + talk.turns.length,
    ...turn,
    reply: ask({ ...turn, ...(job === undefined ? {} : { job }) }),
  };
}

/** What is in the box of the next page: nothing typed is ever lost, unless it was sent. */
function draftAfter({ typed, send, change }: Form, sent: boolean): string {
  if (change !== undefined) return typed.trim() === '' ? change : `${typed}, ${change}`;
  return sent && send === undefined ? '' : typed;
}

function carriedBy(talk: Talk, job: Job | undefined): Record<string, string> {
  return { ...(job ? { job: JSON.stringify(job) } : {}), ...(talk.turns.length ? { talk: JSON.stringify(talk) } : {}) };
}
