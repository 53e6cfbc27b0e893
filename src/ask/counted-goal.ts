import { restsOn } from '../calc/solve.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { Engine } from './engine.ts';
import type { Goal } from './goal.ts';
import { needOf } from './need.ts';
import type { Sentence } from './sentence.ts';
import type { Taken } from './taken.ts';
import { isSmall } from './token.ts';

/**
 * "Is 5 lifts right for 3 inches", "will 3 trucks do it": a count is asked about by its own word, right after the verb that
 * asks. The quantity that it is held against is meant, where the other figures lead to it.
 */
export function countedGoal(engine: Engine, sentence: Sentence, take: (goal: Goal) => Taken): Goal | undefined {
  const { tokens, figures, small, places } = sentence;
  if (!places.has('@check') || figures.length < 2) return undefined;
  const at = figures[0]!;
  const [token, next] = [tokens[at], tokens[at + 1]];
  if (token?.kind !== 'figure' || token.figure.unit || token.figure.form === 'ratio' || next?.kind !== 'word')
    return undefined;
  const isOpening = tokens
    .slice(0, at)
    .every((each) => isSmall(each, small) || (each.kind === 'word' && each.head === 'check'));
  if (!isOpening) return undefined;
  for (const record of engine.byWord.get(next.head) ?? []) {
    if (record.dimension !== 'count') continue;
    const meant = record.heldAgainst ?? record;
    if (meant.cues && isLedTo(engine, record, meant, take)) return { kind: 'quantity', id: meant.id };
  }
  return undefined;
}

/** True where the figure is taken for the count, and the others lead to what is needed of it. */
function isLedTo(engine: Engine, counted: QuantityRecord, meant: QuantityRecord, take: (goal: Goal) => Taken): boolean {
  const { fresh, facts } = take({ kind: 'quantity', id: meant.id });
  if (!fresh.some(({ quantity }) => quantity === counted.id)) return false;
  const found = needOf(
    engine,
    facts.filter(({ quantity }) => quantity !== counted.id),
    meant.id,
  );
  const rests = found && restsOn(found.solved, [meant.id]);
  return fresh.some(({ quantity }) => quantity !== counted.id && (rests?.has(quantity) ?? false));
}
