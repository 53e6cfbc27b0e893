import type { Goal, GoalKind } from './goal.ts';
import type { Scene } from './scene.ts';
import { figureAsks } from './wording/asking.ts';

const kinds: ReadonlySet<GoalKind> = new Set(['fault', 'defect']);

/** What a fault must share with what was told, by weight and as a share, and how far ahead of the next it must be. */
const enough = { score: 7, share: 0.55, ahead: 1.2 };

/**
 * The fault or defect nearest to what is told, where no cue was heard: "stuff peels up with the wheel". Undefined where none
 * is near, or two are about as near; what asks yes or no, or for a figure, is no description.
 */
export function lookAlike({ understood, engine }: Scene): Goal | undefined {
  const { sentence } = understood;
  if (['@check', '@why', ...figureAsks].some((sign) => sentence.places.has(sign))) return undefined;
  const [best, next] = engine.nearest().near(sentence, kinds);
  if (!best || best.score < enough.score || best.share < enough.share) return undefined;
  if (next && next.score * enough.ahead > best.score) return undefined;
  return { kind: best.kind, id: best.id };
}
