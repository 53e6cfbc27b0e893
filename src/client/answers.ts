import { askIn, asksForQuiz } from '../ask/answering.ts';
import { heardOfBook, speaksOfJob } from '../ask/book/hear.ts';
import { engine } from '../ask/engine.ts';
import { emptyJob } from '../ask/job.ts';
import { blank } from '../ask/refusal.ts';
import type { Job, Reply, Request } from '../ask/reply.ts';
import type { Parts } from '../ask/scene.ts';
import { understand } from '../ask/understand.ts';
import type { Entry } from '../ask/views/entry.ts';
import { KnownFacts } from '../ask/views/facts.tsx';
import { Sheet } from '../ask/views/sheet.tsx';

/** What answers: the same engine and the same views as on the server, fetched once the page stands. */
export const version: string = engine.knowledge.version;

let cards: Parts['cards'];
let quiz: Parts['quiz'] | undefined;

/** Fetches the cards and the quiz, which no figure needs. Rejects where they do not come. */
export async function moreParts(): Promise<void> {
  const [cardPart, quizPart] = await Promise.all([import('../ask/cards.ts'), import('../ask/quiz/reply.ts')]);
  cards = cardPart.cardPart;
  quiz = quizPart.quizReply;
}

/** True when all that the server's engine has is here too. */
export const isWhole = (): boolean => cards !== undefined && quiz !== undefined;

/** True for a reply that is made of figures, which stands as it is without the cards. */
export const isStanding = ({ kind }: Reply): boolean => kind === 'value' || kind === 'verdict';

/** Answers a question; what cards or a quiz may answer waits until they are here. */
export async function answer(request: Request): Promise<Reply> {
  if (!isWhole() && !asksForQuiz(engine, request.question)) {
    const reply = askIn(engine, request, { quiz: noQuiz });
    if (isStanding(reply)) return reply;
  }
  if (!isWhole()) await moreParts();
  return askIn(engine, request, { ...(cards ? { cards } : {}), quiz: quiz ?? noQuiz });
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
  return String(Sheet({ entry, latest, ticks }));
}

/** What is known of the job, in HTML. */
export function knownHtml(job: Job | undefined): string {
  return String(KnownFacts({ job, startAgain: '/' }));
}
