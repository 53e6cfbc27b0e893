import type { Ignored, Span } from './reply.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';

/** Figures of the question that nothing was made of; `used` are places that served without being bound to a quantity. */
export function ignoredIn({ understood, request }: Scene, used: readonly Span[] = []): Ignored[] {
  return understood.unbound
    .filter(({ at }) => !used.some(([start, end]) => start === at[0] && end === at[1]))
    .map(({ at }) => ({ text: request.question.slice(...at), from: at, why: en.ignoredFigure }));
}
