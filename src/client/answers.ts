import { askIn, asksForQuiz } from '../ask/answering.ts';
import { heardOfBook, speaksOfJob } from '../ask/book/hear.ts';
import { engine } from '../ask/engine.ts';
import { emptyJob } from '../ask/job.ts';
import { blank } from '../ask/refusal.ts';
import type { Job, Reply, Request } from '../ask/reply.ts';
import type { Parts } from '../ask/scene.ts';
import { understand } from '../ask/understand.ts';
import { isDrawn } from '../ask/views/drawn/is-drawn.ts';
import type { Entry } from '../ask/views/entry.ts';
import { KnownFacts } from '../ask/views/facts.tsx';
import type { Drawings } from '../ask/views/layout.tsx';
import { Sheet } from '../ask/views/sheet.tsx';

/** What answers: the same engine and the same views as on the server, fetched once the page stands. */
export const version: string = engine.knowledge.version;

/** What few answers need, in a file of its own. */
interface More {
  readonly parts: Parts;
  readonly draw: typeof Drawings;
}

let fetchMore: () => Promise<More> = () => Promise.reject(new Error('It was not said where the other parts are.'));
let more: More | undefined;

/** Says how the other parts are had. */
export function partsFrom(fetching: () => Promise<More>): void {
  fetchMore = fetching;
}

/** Fetches what a plain figure does without: cards, quiz, readings, the patches of a job, drawings. Rejects where it does not come. */
export async function moreParts(): Promise<More> {
  more ??= await fetchMore();
  return more;
}

/** True for a reply that is made of figures, which stands as it is without the other parts. */
export const isStanding = ({ kind }: Reply): boolean => kind === 'value' || kind === 'verdict';

/** Answers a question; what another part may answer or draw waits until that is here. Rejects where it does not come. */
export async function answer(request: Request): Promise<Reply> {
  if (!more && !asksForQuiz(engine, request.question)) {
    const reply = askIn(engine, request, { quiz: noQuiz });
    if (isStanding(reply) && !isDrawn(reply)) return reply;
  }
  return askIn(engine, request, (await moreParts()).parts);
}

/** True for what is about a job book or a patch of it. */
export const isOfJob = (question: string): boolean =>
  speaksOfJob(heardOfBook(understand(engine, { question }, emptyJob).sentence, engine));

const noQuiz: Parts['quiz'] = () => ({
  ...blank,
  kind: 'unknown',
  topic: 'quiz',
  text: '',
  rules: { version },
  job: emptyJob,
});

/** One question and its answer sheet, in HTML. */
export function sheetHtml(entry: Entry, latest: boolean, ticks: ReadonlySet<string>): string {
  return String(Sheet({ entry, latest, ticks, draw: more?.draw }));
}

/** What is known of the job, in HTML. */
export function knownHtml(job: Job | undefined): string {
  return String(KnownFacts({ job, startAgain: '/' }));
}
