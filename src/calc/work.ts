import { type Ends, ends } from './ends.ts';
import { evaluate } from './expression.ts';
import type { Known, Solved } from './fact.ts';
import type { Method } from './relation.ts';

type Facts = (id: string) => Solved | undefined;

const none: readonly string[] = [];

/** A figure as it was given or assumed; of what is `counted` the high end of a range that was given. */
export function fromKnown({ id, value, low = value, high = value, assumed = false }: Known, counted: boolean): Solved {
  if (assumed) return { id, value, low, high, saidLow: value, saidHigh: value, assumed: [id], soft: low === high };
  const figure = counted ? high : value;
  return { id, value: figure, low, high, saidLow: counted ? high : low, saidHigh: high, assumed: none, soft: false };
}

/** Works one method from what it needs. Undefined when it has no answer. */
export function work(method: Method, factOf: Facts, counted: boolean): Solved | undefined {
  const value = evaluate(method.by, (id) => factOf(id)!.value);
  if (!Number.isFinite(value)) return undefined;
  let ranged = false;
  let said = false;
  let soft = false;
  let assumed = none;
  for (const id of method.needs) {
    const fact = factOf(id)!;
    ranged ||= fact.low !== fact.high;
    said ||= fact.saidLow !== fact.saidHigh;
    soft ||= fact.soft;
    assumed = union(assumed, fact.assumed);
  }
  const one: Ends = [value, value];
  const [low, high] = ranged ? endsOf(method, (id) => rangeOf(factOf(id)!), one) : one;
  const [saidLow, saidHigh] = said ? endsOf(method, (id) => saidRangeOf(factOf(id)!), one) : one;
  return {
    id: method.finds,
    value: counted ? saidHigh : value,
    low,
    high,
    saidLow: counted ? saidHigh : saidLow,
    saidHigh,
    assumed,
    soft,
    by: method,
  };
}

const rangeOf = ({ low, high }: Solved): Ends => [low, high];
const saidRangeOf = ({ saidLow, saidHigh }: Solved): Ends => [saidLow, saidHigh];

function endsOf(method: Method, fact: (id: string) => Ends, otherwise: Ends): Ends {
  const found = ends(method.by, fact);
  return Number.isFinite(found[0]) && Number.isFinite(found[1]) ? found : otherwise;
}

/** Both lists, each name once, in order. */
function union(a: readonly string[], b: readonly string[]): readonly string[] {
  if (a.length === 0 || b.length === 0) return a.length ? a : b;
  const fresh = b.filter((name) => !a.includes(name));
  return fresh.length ? [...a, ...fresh] : a;
}
