import type { Figure } from '../calc/read/reading.ts';
import { unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { Context } from './role-context.ts';
import type { Sentence } from './sentence.ts';
import { isSmall, type Token } from './token.ts';

/** Words between a thing that is counted and the size of each: "7 loads averaging 13.4 tons", "4 men at 28". */
const joins: ReadonlySet<string> = new Set(['at', 'of', 'average', 'each', 'about', 'around']);

/** The records whose figure a counted thing has, where the figure at a place is what each of them is: "7 loads of 13.4 tons". */
export function sizeOfEach(sentence: Sentence, at: number, { byWord }: Context): readonly QuantityRecord[] {
  const { tokens, small } = sentence;
  const { figure } = tokens[at] as Token & { kind: 'figure' };
  if (figure.group !== undefined) return [];
  let place = at - 1;
  while (isJoin(tokens[place], small)) place--;
  const thing = tokens[place];
  if (place === at - 1 || thing?.kind !== 'word' || !isCountOf(sentence, place - 1, { byWord })) return [];
  return (byWord.get(thing.head) ?? []).filter(
    ({ dimension, roles, bareTold }) =>
      roles?.before?.includes(thing.head) &&
      (figure.unit === undefined ? bareTold !== undefined : unitRow(figure.unit).dimension === dimension),
  );
}

/** True for a bare whole number right before a thing that is counted: "7 loads" are not 7 tons. */
export function isCountOf(sentence: Sentence, at: number, { byWord }: Pick<Context, 'byWord'>): boolean {
  const next = sentence.tokens[at + 1];
  return (
    isCount(sentence.tokens[at]) &&
    next?.kind === 'word' &&
    (byWord.get(next.head) ?? []).some(
      ({ dimension, roles }) => dimension === 'count' && roles?.after?.includes(next.head),
    )
  );
}

const isJoin = (token: Token | undefined, small: ReadonlySet<string>): boolean =>
  token?.kind === 'word' && (joins.has(token.head) || isSmall(token, small));

const isCount = (token: Token | undefined): boolean => token?.kind === 'figure' && isWhole(token.figure);

const isWhole = ({ unit, number, group, form }: Figure): boolean =>
  unit === undefined && group === undefined && form !== 'ratio' && Number.isInteger(number) && number > 0;
