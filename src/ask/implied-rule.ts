import type { Knowledge } from '../rules/knowledge.ts';
import type { PracticeRecord } from '../rules/shapes.ts';
import type { Fact } from './facts.ts';
import type { Goal } from './goal.ts';
import type { Sentence } from './sentence.ts';
import { isStatement } from './stated.ts';
import type { Taken } from './taken.ts';

/** The gravest first: where one way of working breaks two rules, the one that can hurt is told. */
const gravest = ['stop', 'caution', 'ok'];

/**
 * "Open it with loose rock all over?" names no goal, but says how something is done: the practice that judges it is meant.
 * Undefined where nothing is asked, or nothing said is judged.
 */
export function impliedPractice(
  { practices }: Knowledge,
  sentence: Sentence,
  fresh: readonly Fact[],
): Goal | undefined {
  if (!asks(sentence)) return undefined;
  const said = new Map(fresh.flatMap((fact) => ('choice' in fact ? [[fact.quantity, fact.choice] as const] : [])));
  const rank = ({ on, judged }: PracticeRecord): number => gravest.indexOf(judged[said.get(on.id)!]?.status ?? 'ok');
  const [gravestOne] = [...practices.values()]
    .filter(({ on, cues }) => cues && said.has(on.id))
    .sort((a, b) => rank(a) - rank(b));
  return gravestOne && { kind: 'practice', id: gravestOne.id };
}

/**
 * "It's 44 out and dropping, can we lay?" names no goal either: of the limits that stand by themselves, the one on a
 * figure just given is meant. Undefined where figures given belong to several.
 */
export function impliedLimit(
  { limits }: Knowledge,
  sentence: Sentence,
  { told }: Taken,
  goesOn = false,
): Goal | undefined {
  if (!asks(sentence) && (goesOn || !isStatement(sentence))) return undefined;
  const [meant, ...others] = [...limits.values()].filter(({ on, cues }) => cues && told.has(on.id));
  return meant && others.length === 0 ? { kind: 'limit', id: meant.id } : undefined;
}

const asks = ({ places, tokens }: Sentence): boolean =>
  places.has('@check') || tokens.some((token) => token.kind === 'mark' && token.text === '?');
