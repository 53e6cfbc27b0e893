import { ask } from '../ask/ask.ts';
import { talkPatches } from '../ask/book/talk-changes.ts';
import { jobSheet, patchesOf } from '../ask/job-sheet.ts';
import type { Job } from '../ask/reply.ts';
import type { Dress } from '../ask/views/document.tsx';
import { jobPage } from '../ask/views/job-page.tsx';
import { replay } from '../ask/views/talk.ts';
import { knowledge } from '../rules/knowledge.ts';
import { startKeeping } from './keeping.ts';
import { lastTalk } from './talks.ts';
// What both share lies in one file, which packs smaller than many.
import './answers.ts';

/** The job of the talk that was held last on this phone, to be carried into a job book; undefined where it has no patch. */
export async function talkToCarry(): Promise<{ job: string; patches: number } | undefined> {
  const talk = await lastTalk();
  const job: Job | undefined = talk && replay(ask, talk).at(-1)?.reply.job;
  const patches = job ? talkPatches(job).length : 0;
  return patches > 0 ? { job: JSON.stringify(job), patches } : undefined;
}

/** The sheet of the job that was talked of last on this phone. */
export async function documentAt(_: URL, dress: Dress): Promise<string> {
  const talk = await lastTalk();
  const job: Job | undefined = talk && replay(ask, talk).at(-1)?.reply.job;
  return jobPage({ patches: jobSheet(ask, patchesOf(job)), version: knowledge.version, dress });
}

export const start = startKeeping;
