import type { Unit } from '../units.ts';
import { at, lex } from './lexer.ts';
import type { Item, Place, Word } from './reading.ts';
import { readUnit, type UnitRead } from './unit.ts';

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

/** Units named without a number, in the order they stand, with what they are per: "gal a minute" is one, and so is m/min. */
export function namedUnits(items: readonly Item[]): NamedUnit[] {
  const found: NamedUnit[] = [];
  let words: Word[] = [];
  for (const item of items) {
    if (item.kind === 'word') {
      words.push(item);
      continue;
    }
    namedIn(words, found);
    words = [];
  }
  namedIn(words, found);
  return found;
}

/** Adds the units in a run of words. A unit is whole words, so that "ton-mile" is none. */
function namedIn(words: readonly Word[], found: NamedUnit[]): void {
  if (words.length === 0) return;
  const tokens = lex(words.map(({ text }) => text).join(' '));
  const starts = new Map<number, number>();
  const ends = new Map<number, number>();
  let end = -1;
  words.forEach(({ text }, k) => {
    starts.set(end + 1, k);
    end += text.length + 1;
    ends.set(end, k);
  });
  for (let i = 0; at(tokens, i).kind !== 'end'; ) {
    const first = starts.get(at(tokens, i).start);
    const unit = first === undefined || at(tokens, i).kind !== 'letters' ? undefined : readUnit(tokens, i);
    const last = unit && ends.get(at(tokens, unit.next - 1).end);
    if (unit && last !== undefined && isNamed(unit, words.slice(first, last + 1))) {
      const place = [words[first!]!.at[0], words[last]!.at[1]] as const;
      found.push({ unit: unit.unit, ...(unit.unclear ? { unclear: unit.unclear } : {}), at: place });
      i = unit.next;
    } else i++;
  }
}

/** A word that is a unit only after a number may still begin one: m/min. Part of a unit (grams of a kilogram) is no name for it. */
function isNamed({ unclear, times }: UnitRead, words: readonly Word[]): boolean {
  if (times < 1 || unclear === 't') return false;
  return words.length > 1 || !onlyAfterNumber.has(words[0]!.text);
}
