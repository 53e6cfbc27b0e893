import { isSmall, type Token } from './token.ts';

/** How many words may stand between a number of parts and what comes next. */
const reach = 3;

/** "Three parts water to one part tack": the two numbers become one ratio that knows what its parts are of. */
export function joinParts(tokens: readonly Token[], small: ReadonlySet<string>): Token[] {
  const joined: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const pair = pairAt(tokens, i, small);
    joined.push(pair?.token ?? tokens[i]!);
    if (pair) i = pair.last;
  }
  return joined;
}

function pairAt(
  tokens: readonly Token[],
  at: number,
  small: ReadonlySet<string>,
): { token: Token; last: number } | undefined {
  if (!isPart(tokens, at)) return undefined;
  const next = tokens.findIndex((token, i) => i > at + 1 && token.kind !== 'word');
  const [one, other] = [tokens[at], tokens[next]];
  if (next < 0 || next > at + 2 + reach || one?.kind !== 'figure' || other?.kind !== 'figure' || other.figure.unit)
    return undefined;
  const named = isPart(tokens, next) ? next + 1 : next;
  const first = nameAfter(tokens, at + 2, small);
  const second = nameAfter(tokens, named + 1, small);
  if (!first && !second) return undefined;
  return {
    token: {
      kind: 'figure',
      figure: { ...one.figure, form: 'ratio', parts: [one.figure.number, other.figure.number] },
      names: [first, second],
      at: [one.at[0], tokens[named]!.at[1]],
    },
    last: named,
  };
}

/** True where a plain number of parts stands. */
function isPart(tokens: readonly Token[], at: number): boolean {
  const [token, next] = [tokens[at], tokens[at + 1]];
  return token?.kind === 'figure' && !token.figure.unit && next?.kind === 'word' && next.head === 'part';
}

function nameAfter(tokens: readonly Token[], from: number, small: ReadonlySet<string>): string | undefined {
  let at = from;
  while (isSmall(tokens[at], small)) at++;
  const token = tokens[at];
  return token?.kind === 'word' && token.head !== 'to' ? token.head : undefined;
}
