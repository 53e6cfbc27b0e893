import { isUnit, type Unit } from '../units.ts';
import { isDimensionLetter } from './dimension-letters.ts';
import { isInch } from './inch.ts';
import { at, type Tokens } from './lexer.ts';
import { byFirstWord, phraseAt } from './tokens.ts';
import { depthWords, joined, perWords, type UnitWords, unitWords } from './unit-words.ts';

/** A unit as read: which one, and the token after it. */
export interface UnitRead {
  readonly unit: Unit;
  readonly unclear?: string;
  readonly times: number;
  readonly next: number;
  /** A whole word (feet), not a mark or an abbreviation. */
  readonly spelled: boolean;
  readonly spanish: boolean;
  /** The first word or mark of it, as in the table. */
  readonly alias: string;
}

interface Row {
  readonly words: readonly string[];
  readonly of: UnitWords;
  readonly sort: 'short' | 'long' | 'spanish' | 'exact';
  /** m.p.h.: each letter with its own full stop. */
  readonly dotted: boolean;
}

const perPhrases = byFirstWord(perWords.map((words) => ({ words })));

type Atom = Omit<UnitRead, 'unit'> & { readonly unit: Unit | 'g' };

const rows = new Map<string, Row[]>();
for (const of of unitWords) {
  for (const sort of ['exact', 'short', 'long', 'spanish'] as const) {
    for (const alias of of[sort] ?? []) {
      addRow({ words: (sort === 'exact' ? alias : alias.toLowerCase()).split(' '), of, sort, dotted: false });
      const bare = unaccented(alias);
      if (bare !== alias) addRow({ words: bare.split(' '), of, sort, dotted: false });
      if (sort === 'short' && alias.length > 1 && alias.length < 4)
        addRow({ words: [...alias], of, sort, dotted: true });
    }
  }
}
for (const list of rows.values()) list.sort((a, b) => b.words.length - a.words.length);

function addRow(row: Row): void {
  const first = row.words[0]!.toLowerCase();
  rows.set(first, [...(rows.get(first) ?? []), row]);
}
function unaccented(word: string): string {
  return word.replaceAll('á', 'a').replaceAll('é', 'e').replaceAll('í', 'i').replaceAll('ó', 'o').replaceAll('ú', 'u');
}

/** The unit that begins at token `i`, with any "per" parts: "lb per sq yd per 1-inch depth". Undefined when none does. */
export function readUnit(tokens: Tokens, i: number): UnitRead | undefined {
  const first = at(tokens, i);
  const hyphen = first.text === '-' && !first.gap && !at(tokens, i + 1).gap && at(tokens, i + 1).kind === 'letters';
  const atom = readAtom(tokens, hyphen ? i + 1 : i, !hyphen);
  return atom && withPer(tokens, atom);
}

/** First words of the units that are spelled out: "inch and a half", "tons: 20". */
export const unitStarts: readonly string[] = [...rows.keys()].filter((word) => word.length > 1);

/** True when a word is the name of a unit, standing with or without a number. */
export function isUnitWord(word: string): boolean {
  return rows.get(word)?.some((row) => row.words.length === 1 && row.sort !== 'exact') ?? false;
}

/** True when a word is a Spanish unit. */
export function isSpanishUnit(word: string): boolean {
  return rows.get(word)?.some((row) => row.sort === 'spanish') ?? false;
}

/** The rate per unit that begins after `unit`, for a sum of money: `$85` then "a ton". */
export function readPer(tokens: Tokens, next: number, unit: Unit): UnitRead {
  const atom: UnitRead = { unit, times: 1, next, spelled: false, spanish: false, alias: unit };
  return withPer(tokens, atom) ?? atom;
}

function readAtom(tokens: Tokens, i: number, spaced: boolean): Atom | undefined {
  const first = at(tokens, i);
  if (first.kind === 'sign') return readMark(tokens, i);
  if (first.kind !== 'letters') return undefined;
  if (first.text.length === 1 && isDimensionLetter(tokens, i)) return undefined;
  for (const row of rows.get(first.text) ?? []) {
    const next = matchRow(tokens, i, row);
    if (next === undefined) continue;
    if (row.of.unit === 'in' && first.text === 'in' && spaced && !isInch(tokens, i)) continue;
    return raised(tokens, next, row);
  }
  return undefined;
}

function readMark(tokens: Tokens, i: number): Atom | undefined {
  const mark = at(tokens, i).text;
  const after = at(tokens, i + 1);
  const found = (unit: Unit, next: number, unclear?: string): Atom => ({
    ...{ unit, times: 1, next, spelled: false, spanish: false, alias: mark },
    ...(unclear === undefined ? {} : { unclear }),
  });
  if (mark === "'" && after.text === 's' && !after.gap) return undefined; // the 40's
  if (mark === "'") return after.text === "'" && !after.gap ? found('in', i + 2) : found('ft', i + 1);
  if (mark === '"') return found('in', i + 1);
  if (mark === '%') return found('%', i + 1);
  if (mark === '#') return after.kind === 'number' && !after.gap ? undefined : found('lb', i + 1);
  if (mark !== '\u00b0') return undefined;
  if (after.text === 'f') return found('degF', i + 2);
  if (after.text === 'c') return found('degC', i + 2);
  return found('degF', i + 1, 'deg');
}

/** The token after the words of `row`, or undefined. Full stops, and the slash of "sq/yd", may stand between them. */
function matchRow(tokens: Tokens, i: number, row: Row): number | undefined {
  let next = i;
  for (let k = 0; k < row.words.length; k++) {
    if (k > 0) {
      const between = at(tokens, next);
      const dot = between.text === '.' && !between.gap;
      if (row.dotted && (!dot || at(tokens, next + 1).gap)) return undefined;
      const slash = (between.text === '/' || between.text === '-') && !between.gap && k === 1;
      if (dot || (slash && row.words[0]![0] === 's')) next++;
    }
    const word = at(tokens, next);
    if (word.kind !== 'letters' || (row.sort === 'exact' ? word.raw : word.text) !== row.words[k]) return undefined;
    next++;
  }
  return row.sort === 'short' || row.sort === 'exact' ? afterStop(tokens, next) : next;
}

/** A full stop belongs to the abbreviation unless it ends the sentence. */
function afterStop(tokens: Tokens, next: number): number {
  const stop = at(tokens, next);
  if (stop.text !== '.' || stop.gap) return next;
  const after = at(tokens, next + 1);
  const ends = after.kind === 'end' || after.text === '\n' || after.text === '.';
  const capital = after.gap && after.kind === 'letters' && after.raw[0] !== after.text[0];
  return ends || capital ? next : next + 1;
}

/** ft2, yd³, m^2: a power glued to a length. */
function raised(tokens: Tokens, next: number, row: Row): Atom {
  const { unit, unclear, times = 1 } = row.of;
  const common = {
    spelled: row.sort !== 'short' && row.sort !== 'exact',
    spanish: row.sort === 'spanish',
    alias: row.words[0]!,
  };
  const caret = at(tokens, next).text === '^' && !at(tokens, next).gap ? 1 : 0;
  const power = at(tokens, next + caret);
  const raisedUnit = `${unit}${power.text}`;
  if ((power.text === '2' || power.text === '3') && !power.gap && times === 1 && isUnit(raisedUnit)) {
    return { ...common, unit: raisedUnit, times, next: next + caret + 1 };
  }
  return { ...common, unit, times, next, ...(unclear === undefined ? {} : { unclear }) };
}

/** Adds up to two "per" parts, as long as the whole is a unit we hold. */
function withPer(tokens: Tokens, atom: Atom): UnitRead | undefined {
  let key: string = atom.unit;
  let found: UnitRead | undefined = atom.unit === 'g' ? undefined : { ...atom, unit: atom.unit };
  let next = atom.next;
  for (let part = 0; part < 2; part++) {
    const tail = readTail(tokens, next, key);
    if (!tail) break;
    key = `${key}/${tail.unit}`;
    const row = Object.hasOwn(joined, key) ? joined[key] : isUnit(key) ? { unit: key } : undefined;
    if (!row) break;
    next = tail.next;
    found = {
      ...{ unit: row.unit, times: atom.times * (row.times ?? 1), next },
      ...{ spelled: atom.spelled, spanish: atom.spanish, alias: atom.alias },
      ...unclearOf(row, atom, tail),
    };
  }
  return found;
}

/** A rate is as clear as its own row says; a lower-case t or a tonelada in it stays as unclear as it was. */
function unclearOf(row: { unclear?: string }, ...parts: readonly Atom[]): { unclear?: string } {
  if (row.unclear !== 't') return row.unclear === undefined ? {} : { unclear: row.unclear };
  const doubt = parts.find((part) => part.unclear !== undefined)?.unclear;
  return doubt === undefined ? {} : { unclear: doubt };
}

function readTail(tokens: Tokens, i: number, key: string): Atom | undefined {
  const joiner = readJoiner(tokens, i, key);
  if (joiner === undefined) return undefined;
  const open = at(tokens, joiner).text === '(' ? 1 : 0;
  let next = joiner + open;
  const one = at(tokens, next);
  const counted = (one.text === '1' || one.text === 'one') && one.kind !== 'sign';
  if (counted) next += at(tokens, next + 1).text === '-' ? 2 : 1;
  if (joiner === i && !counted && at(tokens, next).text !== 'inch') return undefined;
  const atom = readAtom(tokens, next, false);
  // "150 pies a pulgada y media": between Spanish units `a` is "at", not "per".
  if (!atom || (atom.spanish && at(tokens, i).text === 'a')) return undefined;
  if (atom.unit !== 'in') return atom;
  const deep = at(tokens, atom.next).text === 'of' ? atom.next + 1 : atom.next;
  const worded = depthWords.has(at(tokens, deep).text);
  if (joiner === i && counted && !worded) return undefined;
  const end = worded ? deep + 1 : atom.next;
  return { ...atom, next: at(tokens, end).text === ')' && hasOpen(tokens, i, end) ? end + 1 : end };
}

/** The token after "/" or a word for per; `i` itself when lb/sy is followed straight by its inch. */
function readJoiner(tokens: Tokens, i: number, key: string): number | undefined {
  const first = at(tokens, i);
  if (first.text === '/') return i + 1;
  if (first.kind === 'letters') {
    const per = phraseAt(perPhrases, tokens, i);
    if (per) return i + per.words.length;
  }
  if (key !== 'lb/yd2' && key !== 'lb/yd' && key !== 'kg/m2') return undefined;
  return (first.text === '-' || first.text === '*') && !first.gap ? i + 1 : i;
}

/** True when a bracket was opened within the unit: lb/(sy-in). */
function hasOpen(tokens: Tokens, i: number, end: number): boolean {
  for (let k = Math.max(0, i - 4); k < end; k++) if (at(tokens, k).text === '(') return true;
  return false;
}
