import type { NamedUnit } from '../calc/read/named-units.ts';
import { type Unit, unitRow } from '../calc/units.ts';
import type { Knowledge } from '../rules/knowledge.ts';
import type { Scored } from './goal.ts';
import type { Sentence } from './sentence.ts';
import { figureAsks } from './wording/asking.ts';

/** The most letters between "how many" and the unit that is asked for: a space. */
const gap = 1;

/** Units of these are of so many things that they do not tell what is asked where they open the question. */
const common: ReadonlySet<string> = new Set(['length', 'mass', 'area', 'volume', 'time', 'count', 'ratio']);

/** The unit that is asked for: right after "how many", as in "how many sq yd does a load do", or one that opens the question: "kg per square meter for a 30 mm lift". */
function askedUnit({ tokens }: Sentence, named: readonly NamedUnit[]): Unit | undefined {
  const asks = tokens.filter((token) => token.kind === 'word' && figureAsks.includes(token.head));
  return named.find(
    ({ at, unclear, unit }) =>
      !unclear &&
      (asks.some((token) => at[0] >= token.at[1] && at[0] - token.at[1] <= gap) ||
        (at[0] === 0 && !common.has(unitRow(unit).dimension))),
  )?.unit;
}

/** What was found, less the quantities that are not measured in the unit asked for. */
export function inAskedUnit(
  { quantities }: Knowledge,
  found: readonly Scored[],
  sentence: Sentence,
  named: readonly NamedUnit[],
): readonly Scored[] {
  const unit = named.length > 0 ? askedUnit(sentence, named) : undefined;
  if (!unit) return found;
  const { dimension } = unitRow(unit);
  return found.filter(({ kind, id }) => kind !== 'quantity' || quantities.get(id)?.dimension === dimension);
}
