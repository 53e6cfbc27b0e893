import { toBase } from '../../calc/quantity.ts';
import type { Unit } from '../../calc/units.ts';
import { sayFigure, sayRange } from '../../calc/wording.ts';
import { knowledge, optionTitle } from '../../rules/knowledge.ts';
import type { Said, Value } from '../reply.ts';
import { sayEnds } from '../say.ts';
import { en } from '../wording/en.ts';

/** What a quantity, choice or rule is called; an id no record has is spelled out. */
export function titleOf(id: string): string {
  const { quantities, choices, limits, practices } = knowledge;
  const record = quantities.get(id) ?? choices.get(id) ?? limits.get(id) ?? practices.get(id);
  return record?.title ?? id.replaceAll('-', ' ');
}

/** A fact as people say it: what it is, and its figure as given or its word. */
export function sayFact(fact: { readonly quantity: string } & Said): string {
  return en.fact(
    titleOf(fact.quantity),
    'unit' in fact ? asGiven(fact.number, fact.unit) : optionTitle(knowledge.choices, fact.quantity, fact.choice),
  );
}

/** A figure as it was given: not rounded. */
export function asGiven(number: number, unit: Unit): string {
  return sayFigure(toBase(number, unit), unit, { given: true });
}

/** The ends of a value's range in words, where it has one. */
export function rangeOf({ quantity, unit, low, high }: Value): string | undefined {
  if (low === undefined || high === undefined) return undefined;
  const [from, to] = [toBase(low, unit), toBase(high, unit)];
  const record = knowledge.quantities.get(quantity);
  return record ? sayEnds(record, { low: from, high: to }, unit) : sayRange(from, to, unit);
}

/** A figure in words, parted after its number so that the number can be set large: "1 1/2 in" is "1 1/2" and "in". */
export function partFigure(text: string): { readonly number: string; readonly rest: string } {
  const number = /^-?[\d,]{1,30}(?:\.\d{1,12})?(?:[ \u00a0]\d{1,3}\/\d{1,3}|\/\d{1,3})?/.exec(text)?.[0] ?? '';
  return { number, rest: text.slice(number.length).trim() };
}
