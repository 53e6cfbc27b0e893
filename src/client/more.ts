import { bookReply } from '../ask/book/talk-reply.ts';
import { cardPart } from '../ask/cards.ts';
import { quizReply } from '../ask/quiz/reply.ts';
import type { Parts } from '../ask/scene.ts';
import { readingsPart } from '../ask/survey/part.ts';
import { Drawings } from '../ask/views/layout.tsx';
// What both share lies in one file, which packs smaller than many.
import './answers.ts';

/** What few answers need: fetched behind what answers a plain figure, and waited for where it is needed. */
export const parts: Parts = { cards: cardPart, quiz: quizReply, readings: readingsPart, book: { reply: bookReply } };
export const draw = Drawings;
