import { type Built, buildQuiz, type QuizSet } from '../../src/ask/quiz/build.ts';
import type { Given } from '../../src/ask/quiz/mark.ts';
import type { QuizRequest } from '../../src/ask/quiz/request.ts';
import type { Made } from '../../src/ask/quiz/shapes.ts';
import type { QuizItem } from '../../src/ask/reply.ts';
import { knowledge } from '../../src/rules/knowledge.ts';

/** A set that must come about. */
export function setOf(request: QuizRequest): { set: QuizSet; made: readonly Made[] } {
  const built: Built = buildQuiz(knowledge, request);
  if ('fault' in built) throw new Error(built.fault);
  return built;
}

/** Why a set cannot be had. */
export function faultOf(request: QuizRequest): string {
  const built = buildQuiz(knowledge, request);
  if (!('fault' in built)) throw new Error('a set came about');
  return built.fault;
}

/** The keys of an item as texts. */
export const keysOf = ({ key }: QuizItem): string[] => (typeof key === 'object' ? [...key] : [String(key)]);

/** The answer that is right, as a form sends it. */
export function rightAnswer(item: QuizItem): Given {
  if (item.kind === 'number') return [String(item.key)];
  const keys = keysOf(item);
  if (item.kind === 'order') return item.options.map(({ text }) => String(keys.indexOf(text) + 1));
  return item.options.flatMap(({ text }, at) => (keys.includes(text) ? [String(at)] : []));
}
