import { ask } from '../ask/ask.ts';
import { jobSheet, patchesOf } from '../ask/job-sheet.ts';
import type { Job } from '../ask/reply.ts';
import type { Dress } from '../ask/views/document.tsx';
import { jobPage } from '../ask/views/job-page.tsx';
import { replay } from '../ask/views/talk.ts';
import { knowledge } from '../rules/knowledge.ts';
import { startKeeping } from './keeping.ts';
import { lastTalk } from './talks.ts';

/** The sheet of the job that was talked of last on this phone. */
export async function documentAt(_: URL, dress: Dress): Promise<string> {
  const talk = await lastTalk();
  const job: Job | undefined = talk && replay(ask, talk).at(-1)?.reply.job;
  return jobPage({ patches: jobSheet(ask, patchesOf(job)), version: knowledge.version, dress });
}

export const start = startKeeping;
