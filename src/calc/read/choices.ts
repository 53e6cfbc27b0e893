import { roleWords } from './near-words.ts';
import { numberWords } from './number-words.ts';
import type { Figure, Item } from './reading.ts';

/** After "one lift or two" these go on with the sentence; any other word is what the second number counts. */
const goesOn = new Set([
  ...['for', 'on', 'in', 'at', 'with', 'of', 'to', 'is', 'are', 'will', 'should', 'can', 'do', 'does', 'and', 'then'],
  ...['if', 'when', 'per', 'each', 'or', 'before', 'after', 'here', 'there', 'ok', 'okay', 'right', 'from', 'over'],
]);

/**
 * "One lift or two", "2 passes or 3": a choice of counts. The second number is a word like those around it, and no bare
 * figure that could be taken for a size; so too in "a load or two".
 */
export function settleChoices(items: Item[], text: string): void {
  for (let k = 1; k + 1 < items.length; k++) {
    const or = items[k]!;
    if (or.kind !== 'word' || (or.text !== 'or' && or.text !== 'o')) continue;
    const noun = items[k - 1]!;
    const more = items[k + 1]!;
    if (noun.kind !== 'word' || !isCount(more) || isSize(noun.text)) continue;
    const first = items[k - 2];
    const choice = isCount(first) && first.number < more.number && more.number <= 2 * first.number;
    if (!isOne(first, noun.text) && !(choice && endsChoice(items[k + 2], noun.text))) continue;
    items[k + 1] = { kind: 'word', text: text.slice(...more.at).toLowerCase(), at: more.at };
  }
}

/** A whole number of things, with nothing said of it. */
function isCount(item: Item | undefined): item is Figure {
  if (item?.kind !== 'figure' || item.unit !== undefined || item.group !== undefined || item.low !== undefined)
    return false;
  return Number.isInteger(item.number) && item.number > 0 && item.bound === undefined && item.parts === undefined;
}

/** In "12 wide or 14" the word names a side, not a thing that is counted. */
function isSize(noun: string): boolean {
  return roleWords.has(noun) && noun !== 'lift' && noun !== 'lifts';
}

/** Nothing after the second number that it could count, unless it is the same thing again: one lift or two LIFTS. */
function endsChoice(after: Item | undefined, noun: string): boolean {
  if (after === undefined || after.kind === 'mark') return true;
  return after.kind === 'word' && (goesOn.has(after.text) || stem(after.text) === stem(noun));
}

/** Enough of a noun to tell that pass and passes are one. */
function stem(noun: string): string {
  return noun.replace(/e?s$/, '').replace(/s$/, '');
}

/** "A load or two", "one lane or two" (which is one word, one-lane). */
function isOne(before: Item | undefined, noun: string): boolean {
  const article = before?.kind === 'word' && (before.text === 'a' || before.text === 'an');
  return article || (noun.includes('-') && numberWords.has(noun.slice(0, noun.indexOf('-'))));
}
