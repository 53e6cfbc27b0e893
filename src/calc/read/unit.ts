import { isUnit, type Unit } from '../units.ts';
import { at, type Tokens } from './lexer.ts';
import { depthWords, joined, perWords } from './rate-words.ts';
import { byFirstWord, isArticle, phraseAt } from './tokens.ts';
import { type Atom, readAtom } from './unit-atoms.ts';

/** A unit as read, with whatever it is "per": which one, and the token after it. */
export type UnitRead = Omit<Atom, 'unit'> & { readonly unit: Unit };

const perPhrases = byFirstWord(perWords.map((words) => ({ words })));

/** The unit that begins at token `i`, with any "per" parts: "lb per sq yd per 1-inch depth". Undefined when none does. */
export function readUnit(tokens: Tokens, i: number): UnitRead | undefined {
  const first = at(tokens, i);
  const hyphen = first.text === '-' && !first.gap && !at(tokens, i + 1).gap && at(tokens, i + 1).kind === 'letters';
  const atom = readAtom(tokens, hyphen ? i + 1 : i, hyphen || !first.gap ? 'glued' : 'spaced');
  const unit = atom && withPer(tokens, atom);
  return unit ?? (atom?.unit === 'g' ? grams(tokens, i, atom) : undefined);
}

/** Below this, g may be a gallon per something: .05 g. */
const leastGrams = 10;

/** `g` is a gram after a number too great for a rate of tack, with nothing that it is per: 1200 g. */
function grams(tokens: Tokens, i: number, atom: Atom): UnitRead | undefined {
  const [number, after] = [at(tokens, i - 1), at(tokens, atom.next).text];
  const small = at(tokens, atom.next - 1).raw !== 'G';
  if (!small || number.kind !== 'number' || number.value < leastGrams || after === '/' || after === 'per')
    return undefined;
  return { ...atom, unit: 'kg', times: 0.001 };
}

/** The rate per unit that begins after `unit`, for a sum of money: `$85` then "a ton". */
export function readPer(tokens: Tokens, next: number, unit: Unit): UnitRead {
  const atom: UnitRead = { unit, unclear: undefined, times: 1, next, spelled: false, spanish: false, alias: unit };
  return withPer(tokens, atom) ?? atom;
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
    const row = rateOf(key);
    if (!row) break;
    next = tail.next;
    const unclear = row.unclear === 't' ? (atom.unclear ?? tail.unclear) : row.unclear;
    found = { ...atom, unit: row.unit, unclear, times: atom.times * (row.times ?? 1), next };
  }
  return found;
}

function rateOf(key: string): { unit: Unit; unclear?: string; times?: number } | undefined {
  if (Object.hasOwn(joined, key)) return joined[key];
  return isUnit(key) ? { unit: key } : undefined;
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
  const atom = readAtom(tokens, next, 'rate');
  // "150 pies a pulgada y media": between Spanish units `a` is "at", not "per".
  if (!atom || (atom.spanish && at(tokens, i).text === 'a')) return undefined;
  if (atom.unit !== 'in') return atom;
  const deep = at(tokens, atom.next).text === 'of' ? atom.next + 1 : atom.next;
  const worded = depthWords.has(at(tokens, deep).text);
  // "300 ft an inch thick" is a length and a depth; only what is spread is so much an inch of depth.
  if (worded && isArticle(at(tokens, i)) && ['ft', 'm', 'yd', 'mi', 'km'].includes(key)) return undefined;
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
