import type { Knowledge } from '../rules/knowledge.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { isPlausible } from './as-role.ts';
import { type Cue, isHeard } from './cue.ts';
import type { Fact } from './facts.ts';
import type { Sentence } from './sentence.ts';
import { tradeCue } from './trade-cue.ts';

/** A quantity that a figure can be of instead, and the words that tell so. */
interface Instead {
  readonly record: QuantityRecord;
  readonly of: ReadonlySet<string>;
  readonly cues: readonly Cue[];
}

const known = new WeakMap<Knowledge['quantities'], readonly Instead[]>();

function insteadIn({ quantities }: Knowledge): readonly Instead[] {
  const before = known.get(quantities);
  if (before) return before;
  const found = [...quantities.values()].flatMap((record): Instead[] =>
    record.insteadOf
      ? [{ record, of: new Set(record.insteadOf.of.map(({ id }) => id)), cues: record.insteadOf.cues.map(tradeCue) }]
      : [],
  );
  known.set(quantities, found);
  return found;
}

/** "Right lane closed, 12 ft": a lone figure of the patch is one of what the sentence speaks of instead, where it is of its size. */
export function insteadOf(knowledge: Knowledge, sentence: Sentence, facts: readonly Fact[]): readonly Fact[] {
  let read = facts;
  for (const { record, of, cues } of insteadIn(knowledge)) {
    const [fact, ...others] = read.filter(({ quantity }) => of.has(quantity));
    if (!fact || others.length > 0 || !('unit' in fact) || read.some(({ quantity }) => quantity === record.id))
      continue;
    if (!cues.some((cue) => isHeard(cue, sentence)) || !isPlausible(fact, fact.unit, record)) continue;
    read = read.map((each) => (each === fact ? { ...fact, quantity: record.id } : each));
  }
  return read;
}
