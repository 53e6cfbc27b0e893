import type { Knowledge } from '../rules/knowledge.ts';
import type { PracticeRecord } from '../rules/shapes.ts';
import type { Fact } from './facts.ts';
import type { Goal } from './goal.ts';
import type { Sentence } from './sentence.ts';

/** The gravest first: where one way of working breaks two rules, the one that can hurt is told. */
const gravest = ['stop', 'caution', 'ok'];

/**
 * "Open it with loose rock all over?" names no goal, but says how something is done: the practice that judges it is meant.
 * Undefined where nothing is asked, or nothing said is judged.
 */
export function impliedPractice(
  { practices }: Knowledge,
  { places, tokens }: Sentence,
  fresh: readonly Fact[],
): Goal | undefined {
  const asks = places.has('@check') || tokens.some((token) => token.kind === 'mark' && token.text === '?');
  if (!asks) return undefined;
  const said = new Map(fresh.flatMap((fact) => ('choice' in fact ? [[fact.quantity, fact.choice] as const] : [])));
  const rank = ({ on, judged }: PracticeRecord): number => gravest.indexOf(judged[said.get(on.id)!]?.status ?? 'ok');
  const [gravestOne] = [...practices.values()]
    .filter(({ on, cues }) => cues && said.has(on.id))
    .sort((a, b) => rank(a) - rank(b));
  return gravestOne && { kind: 'practice', id: gravestOne.id };
}
