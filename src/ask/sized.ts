import type { Figure } from '../calc/read/reading.ts';
import { unitRow } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { Context } from './role-context.ts';
import type { Sentence } from './sentence.ts';
import { isSmall, type Token } from './token.ts';

/** Words between a thing that is counted and the size of each: "7 loads averaging 13.4 tons", "4 men at 28". */
const joins: ReadonlySet<string> = new Set(['at', 'of', 'average', 'each', 'about', 'around']);

/** The records whose figure a counted thing has, where the figure at a place is what each of them is: "7 loads of 13.4 tons". */
export function sizeOfEach(sentence: Sentence, at: number, { byWord, quantities }: Context): readonly QuantityRecord[] {
  const { tokens, small } = sentence;
  const after = tokens[at + 1];
  // "2 ruts each 2 ft wide": a word of its own tells more.
  const isTold =
    after?.kind === 'word' && (byWord.get(after.head) ?? []).some(({ roles }) => roles?.after?.includes(after.head));
  if (isTold) return [];
  const { figure } = tokens[at] as Token & { kind: 'figure' };
  if (figure.group !== undefined) return [];
  const prices = pricesAt(sentence, at, { quantities, byWord });
  if (prices.length > 0) return prices;
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

/** Words that stand beside money, so that a bare figure is money too. */
const moneyPlaces = ['#price', '#wage', '#money', 'cost', 'price', 'bill'];

/**
 * What a sum of money may be that stands right after "at": the price of so many tons, as in "60 tons of mix at $85", or what
 * each of so many people gets, as in "crew of 6 at $31".
 */
function pricesAt(
  { tokens, places, small }: Sentence,
  at: number,
  { quantities, byWord }: Pick<Context, 'quantities' | 'byWord'>,
): readonly QuantityRecord[] {
  const [own, lead] = [tokens[at], tokens[at - 1]];
  if (own?.kind !== 'figure' || lead?.kind !== 'word' || lead.head !== 'at') return [];
  const isMoney = own.figure.unit === 'USD' || (!own.figure.unit && moneyPlaces.some((word) => places.has(word)));
  if (!isMoney) return [];
  const before = tokens.findLastIndex(({ kind }, i) => i < at && kind !== 'word');
  const of = tokens[before];
  if (of?.kind !== 'figure') return [];
  if (of.figure.unit && unitRow(of.figure.unit).dimension === 'mass')
    return [...quantities.values()].filter(({ dimension }) => dimension === 'price');
  let place = before - 1;
  while (isSmall(tokens[place], small)) place--;
  const who = tokens[place];
  if (before !== at - 2 || !isCount(of) || who?.kind !== 'word') return [];
  return (byWord.get(who.head) ?? []).filter(
    ({ dimension, roles }) => dimension === 'wage' && roles?.before?.includes(who.head),
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

/** "Two weeks", "9 guys": a bare number of things that no quantity counts or measures is no figure of the job. */
export function isOfOthers({ tokens, small }: Sentence, at: number, { byWord }: Pick<Context, 'byWord'>): boolean {
  const next = tokens[at + 1];
  return (
    isCount(tokens[at]) &&
    next?.kind === 'word' &&
    next.many === true &&
    !isSmall(next, small) &&
    !byWord.has(next.head)
  );
}
