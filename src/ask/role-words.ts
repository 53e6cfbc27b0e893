import type { Figure } from '../calc/read/reading.ts';
import { unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { asRole, isPlausible } from './as-role.ts';
import type { Words } from './beside.ts';
import type { Context } from './role-context.ts';
import { weights } from './role-weights.ts';

/** "300 ft of lane": the thing named tells the role where the figure is of a size for it, and no other. */
const isOfThing = (figure: Figure, { after: [first] }: Words, record: QuantityRecord): boolean =>
  first !== undefined &&
  figure.unit !== undefined &&
  unitRow(figure.unit).dimension === record.dimension &&
  (record.roles?.of?.includes(first) ?? false) &&
  isPlausible(asRole(figure, record), figure.unit, record);

/** "Signs for a 300 ft patch": the length is the patch's, whatever field is spoken of. */
const isOfOther = (figure: Figure, words: Words, record: QuantityRecord, byWord: Context['byWord']): boolean =>
  (byWord.get(words.next ?? '') ?? []).some((other) => other !== record && isOfThing(figure, words, other));

/** How surely the words beside a figure give it a role. A quantity with a field of its own comes first there. */
export function wordScore(
  figure: Figure,
  words: Words,
  record: QuantityRecord,
  { weak: weakWords, byWord }: Context,
  isInField = true,
): { word: number; weak: number } {
  const { roles, setting, units, dimension } = record;
  const best = (found: readonly string[], wanted: readonly string[] | undefined, most: number): number => {
    const at = found.findIndex((word) => !weakWords.has(word) && wanted?.includes(word));
    return at < 0
      ? 0
      : most -
          weights.further * at -
          (at > 0 && !figure.unit && units.us !== '1' && weakWords.has(found[0]!) ? weights.beyondWeak : 0);
  };
  const after = best(words.after, roles?.after, weights.after);
  const word = Math.max(
    after,
    best(words.before, roles?.before, weights.before),
    words.right && roles?.before?.includes(words.right) ? weights.before : 0,
    isOfThing(figure, words, record) ? weights.of : 0,
    words.next && roles?.beside?.includes(words.next) ? (dimension === 'count' ? weights.counted : weights.beside) : 0,
  );
  if (after === 0 && isOfOther(figure, words, record, byWord)) return { word: 0, weak: 0 };
  if (word > 0) return { word: word + (setting && isInField ? weights.setting : 0), weak: 0 };
  const [next] = words.before;
  return { word, weak: next && weakWords.has(next) && roles?.before?.includes(next) ? weights.weak : 0 };
}
