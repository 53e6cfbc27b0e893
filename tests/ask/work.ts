import { ask } from '../../src/ask/ask.ts';
import { engine } from '../../src/ask/engine.ts';
import { goalsOf, goalText } from '../../src/ask/goal.ts';
import type { Reply } from '../../src/ask/reply.ts';
import { type Sentence, sentenceOf } from '../../src/ask/sentence.ts';
import { suits } from '../../src/ask/work-goals.ts';
import { read } from '../../src/calc/read/read.ts';

/** A question read into head words. */
export const sentence = (question: string): Sentence => sentenceOf(read(question, {}), engine.vocabulary, engine.small);

/** What a question is taken to be after, best first, as `kind/id`: held against every cue there is, those of figures and rules too. */
export function goals(question: string): string[] {
  const heard = sentence(question);
  return goalsOf(engine.goals, heard)
    .filter((goal) => suits(goal, heard))
    .map(goalText);
}

/** Replies of a conversation, each question asked with the job the last reply gave. */
export function talk(...questions: readonly string[]): Reply[] {
  const replies: Reply[] = [];
  for (const question of questions) {
    const job = replies.at(-1)?.job;
    replies.push(ask(job ? { question, job } : { question }));
  }
  return replies;
}

/** The last reply of a conversation. */
export const last = (...questions: readonly string[]): Reply => talk(...questions).at(-1)!;
