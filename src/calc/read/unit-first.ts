import { at, type Tokens } from './lexer.ts';
import { type Measured, numberRead } from './measured.ts';
import { countedWords, materials } from './near-words.ts';
import { readNumber } from './numbers.ts';
import { isInchDeep } from './one-inch.ts';
import { isArticle } from './tokens.ts';
import { readUnit, type UnitRead } from './unit.ts';
import { isUnitWord } from './unit-atoms.ts';
import { addPart } from './unit-parts.ts';
import { withUnit } from './with-unit.ts';

/** Units nobody means one of: "wait a minute", "give me a second", "a degree of care". */
const notAlone: ReadonlySet<string> = new Set(['s', 'min', '%', 'degF', 'degC', 'USD']);

/**
 * "An inch", "a ton of mix", "inch and a half", "300 long inch deep": a unit that is its own number. `after` tells that a
 * figure stands right before.
 */
export function readUnitFirst(tokens: Tokens, i: number, after = false): Measured | undefined {
  const article = isArticle(at(tokens, i));
  const start = article ? i + 1 : i;
  const word = at(tokens, start);
  if (word.kind !== 'letters' || word.text.length < 2) return undefined;
  const unit = readUnit(tokens, start);
  if (!unit) return undefined;
  const alone = (unit.spelled || unit.alias === 'hr') && unit.times >= 1;
  if (!alone || notAlone.has(unit.unit)) return readLabelled(tokens, i, unit);
  const whole = withUnit(i, unit, numberRead(1, start, 'spelled'));
  if (addPart(tokens, whole, unit) || isInchDeep(tokens, i, start, after)) return whole;
  if (!article) return readLabelled(tokens, i, unit);
  return isRate(tokens, i, unit) || isIdiom(tokens, unit) ? undefined : whole;
}

const unitMarks = new Set(["'", '"', '#', '%']);

/** "How many loads an hour", "20 tons a mile": a rate of something else, not one hour and one mile. */
function isRate(tokens: Tokens, i: number, unit: UnitRead): boolean {
  if (i === 0) return false;
  const before = at(tokens, i - 1);
  if (before.kind === 'letters') {
    if (ofRates.has(unit.unit) && isCounted(tokens, i - 1)) return true;
    return countedWords.has(before.text) || (before.text !== 'in' && isUnitWord(before.text));
  }
  return before.kind === 'number' || unitMarks.has(before.text);
}

const ofRates: ReadonlySet<string> = new Set(['h', 'mi', 'ton']);

/** "200 cars", "how many patches": things counted, before an hour or a mile. */
function isCounted(tokens: Tokens, i: number): boolean {
  const number = at(tokens, i - 1);
  return at(tokens, i).text.endsWith('s') && (number.kind === 'number' || number.text === 'many');
}

/** "A ton of cracks" is many cracks. */
function isIdiom(tokens: Tokens, unit: UnitRead): boolean {
  if (unit.unit !== 'ton' || at(tokens, unit.next).text !== 'of') return false;
  return !materials.has(at(tokens, unit.next + 1).text);
}

const notLabelled = new Set(['x', 'by', '*', ':']);

/** "Toneladas: 20", "feet = 150": the unit named before its number. */
function readLabelled(tokens: Tokens, i: number, unit: UnitRead): Measured | undefined {
  const mark = at(tokens, unit.next).text;
  if ((mark !== ':' && mark !== '=') || at(tokens, i).text.length < 3 || unit.alias === 'min') return undefined;
  if (at(tokens, unit.next + 1).kind !== 'number') return undefined;
  const read = readNumber(tokens, unit.next + 1);
  if (!read || readUnit(tokens, read.next) || notLabelled.has(at(tokens, read.next).text)) return undefined;
  const figure = withUnit(i, unit, read);
  figure.next = read.next;
  return figure;
}
