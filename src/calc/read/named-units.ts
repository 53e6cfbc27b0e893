import type { Unit } from '../units.ts';
import type { Item, Place } from './reading.ts';
import { unitWords } from './unit-words.ts';

/** A unit that stands as a word, without a number: "how many gallons", "in mm". */
export interface NamedUnit {
  readonly unit: Unit;
  /** As typed, where the word can mean two things. */
  readonly unclear?: string;
  readonly at: Place;
}

/** Letters and words that are a unit only after a number. */
const onlyAfterNumber = new Set([
  'in',
  'ins',
  'm',
  'l',
  's',
  'h',
  'g',
  't',
  'a',
  'ac',
  'mi',
  'min',
  'second',
  'seconds',
  'minute',
  'minutes',
  'hour',
  'hours',
]);
/** Words of the longest name: square yards per hour is read as its first two. */
const longest = 3;

const names = new Map<string, { unit: Unit; unclear?: string }>();
for (const { unit, short = [], long = [], spanish = [], unclear } of unitWords) {
  if (unit === 'g') continue;
  for (const alias of [...short, ...long, ...spanish]) {
    const name = alias.toLowerCase();
    if (!onlyAfterNumber.has(name) && !names.has(name)) names.set(name, { unit, ...(unclear ? { unclear } : {}) });
  }
}

/** Units named without a number, in the order they stand; the longest name that fits is taken. */
export function namedUnits(items: readonly Item[]): NamedUnit[] {
  const found: NamedUnit[] = [];
  for (let i = 0; i < items.length; i++) {
    for (let length = longest; length > 0; length--) {
      const words = items.slice(i, i + length);
      if (words.length < length || !words.every((item) => item.kind === 'word')) continue;
      const named = names.get(words.map((item) => item.text).join(' '));
      if (!named) continue;
      found.push({ ...named, at: [words[0]!.at[0], words.at(-1)!.at[1]] });
      i += length - 1;
      break;
    }
  }
  return found;
}
