import { askIn, jobKnownTo } from './answering.ts';
import { bookReply } from './book/talk-reply.ts';
import { cardPart } from './cards.ts';
import { engine as shipped } from './engine.ts';
import { filesPart } from './files-part.ts';
import { quizReply } from './quiz/reply.ts';
import type { Job, Reply, Request } from './reply.ts';
import type { Parts } from './scene.ts';
import { readingsPart } from './survey/part.ts';

export { refuse } from './refusal.ts';

/** All that the engine can do, loaded at once. */
export const allParts: Parts = {
  cards: cardPart,
  quiz: quizReply,
  readings: readingsPart,
  book: { reply: bookReply },
  files: filesPart,
};

/** Answers a typed question by the rules as shipped, with all parts at hand (`askIn`). */
export const ask = (request: Request): Reply => askIn(shipped, request, allParts);

/** A job as it was sent back, with only the facts that the records know. Undefined for one that cannot be read. */
export const knownJob = (sent: unknown): Job | undefined => jobKnownTo(shipped, sent);
