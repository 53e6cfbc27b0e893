import { type Expression, factsOf, minus, over, partsOf, plus, power, times } from './expression.ts';

/**
 * Turns `whole = e` round: the expression for the fact `id`. Undefined when that fact stands more than once, or under a
 * step that cannot be undone (a rounding, a table, the larger of two). Of an even power the root above nothing is taken.
 */
export function isolate(e: Expression, id: string, whole: Expression): Expression | undefined {
  if (e.op === 'fact') return e.id === id ? whole : undefined;
  const parts = partsOf(e);
  const holders = parts.filter((part) => factsOf(part).includes(id));
  const holder = holders[0];
  if (!holder || holders.length > 1) return undefined;
  const others = parts.filter((part) => part !== holder);
  switch (e.op) {
    case 'times':
      return isolate(holder, id, others.length ? over(whole, productOf(others)) : whole);
    case 'plus':
      return isolate(
        holder,
        id,
        others.reduce((left, part) => minus(left, part), whole),
      );
    case 'over':
      return isolate(holder, id, holder === e.of[0] ? times(whole, e.of[1]) : over(e.of[0], whole));
    case 'minus':
      return isolate(holder, id, holder === e.of[0] ? plus(whole, e.of[1]) : minus(e.of[0], whole));
    case 'power':
      return isolate(holder, id, power(whole, 1 / e.exponent));
    default:
      return undefined;
  }
}

const productOf = (parts: readonly Expression[]): Expression => (parts.length === 1 ? parts[0]! : times(...parts));
