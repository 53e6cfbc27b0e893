import type { Knowledge } from '../rules/knowledge.ts';
import { isPlausible } from './as-role.ts';
import type { Scored } from './goal.ts';
import type { UnitSystem } from './reply.ts';
import type { Sentence } from './sentence.ts';

/**
 * False for a limit that was heard by a bare number of a size that what it judges never has: "700 out there" is no
 * temperature.
 */
export function fitsInSize(
  { limits }: Knowledge,
  { kind, id, cue }: Scored,
  { tokens }: Sentence,
  system: UnitSystem,
): boolean {
  const on = kind === 'limit' ? limits.get(id)?.on : undefined;
  if (!on?.bare || !cue.needs.some((term) => term.some((words) => words.includes('#number')))) return true;
  const unit = on.bare[system];
  const bare = tokens.flatMap((token) => (token.kind === 'figure' && !token.figure.unit ? [token.figure] : []));
  return bare.length === 0 || bare.some((figure) => isPlausible(figure, unit, on));
}
