import { restsOn } from '../calc/solve.ts';
import { whatFollows } from '../rules/start.ts';
import type { Engine } from './engine.ts';
import { type Fact, knownFrom } from './facts.ts';
import type { Scored } from './goal.ts';
import type { Job } from './reply.ts';
import type { Spoken } from './sentence.ts';

/** A card that explains a term, as a job carries what was asked for. */
const term = /^card\/term-([a-z-]{1,40})$/;

/** The goal that a card leaves in a job: only a term is spoken of further. */
export const cardGoal = (id: string): string | undefined => (term.test(`card/${id}`) ? `card/${id}` : undefined);

/** What the turn before spoke of, for words that stand for it: the term explained, or what a practice judges. Undefined where nothing was said before. */
export function spokenBefore({ goal, facts, turn }: Job, { knowledge, vocabulary }: Engine): Spoken | undefined {
  if (turn === 0 || (goal === undefined && facts.length === 0)) return undefined;
  const named = term.exec(goal ?? '')?.[1];
  const practice = goal?.startsWith('practice/') ? knowledge.practices.get(goal.slice('practice/'.length)) : undefined;
  const [thing] = practice?.on.id.split('-') ?? [];
  return { of: [named, thing].flatMap((word) => (word ? [vocabulary.head(word)] : [])) };
}

/**
 * False for a quantity that is heard only because something was said before ("what did that leave"), where it is not worked
 * out from all the figures that were.
 */
export function followsFrom({ knowledge }: Engine, { kind, id, cue }: Scored, kept: readonly Fact[]): boolean {
  if (kind !== 'quantity' || !cue.needs.some(([first]) => first?.includes('@after'))) return true;
  const solved = whatFollows(knowledge, knownFrom(kept));
  const rests = restsOn(solved, [id]);
  const figures = kept.filter((fact) => 'unit' in fact);
  return figures.length > 0 && Boolean(solved.get(id)?.by) && figures.every(({ quantity }) => rests.has(quantity));
}
