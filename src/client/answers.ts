import { ask, knownJob } from '../ask/ask.ts';
import type { Job, Reply, Request } from '../ask/reply.ts';
import type { Entry } from '../ask/views/entry.ts';
import { KnownFacts } from '../ask/views/facts.tsx';
import { Sheet } from '../ask/views/sheet.tsx';
import { knowledge } from '../rules/knowledge.ts';

/** What answers: the same engine and the same views as on the server, fetched once the page stands. */
export const version: string = knowledge.version;

export const answer = (request: Request): Reply => ask(request);

export const jobOf = (sent: unknown): Job | undefined => knownJob(sent);

/** One question and its answer sheet, in HTML. */
export function sheetHtml(entry: Entry, latest: boolean, ticks: ReadonlySet<string>): string {
  return String(Sheet({ entry, latest, ticks }));
}

/** What is known of the job, in HTML. */
export function knownHtml(job: Job | undefined): string {
  return String(KnownFacts({ facts: job?.facts ?? [], startAgain: '/' }));
}
