import { readClock } from './clock.ts';
import { isDimensionLetter } from './dimension-letters.ts';
import { plainWhole, readFraction } from './fraction.ts';
import { at, type Tokens } from './lexer.ts';
import {
  callWords,
  gluedJoins,
  gluedWords,
  gradeLetters,
  labelWords,
  months,
  notCodes,
  onRoadWords,
  routeFirst,
  routeSecond,
  routeWords,
  sieveWords,
  spacedGrades,
  yearWords,
} from './name-words.ts';
import { roleWords } from './near-words.ts';
import { numberWords } from './number-words.ts';
import type { Name } from './reading.ts';
import { readUnit } from './unit.ts';

/** A name as read: of what sort, and the token after it. */
export interface NameRead {
  readonly sort: Name['sort'];
  readonly next: number;
}

/** Words a name can begin with, besides letters that touch their digits. */
export const nameStarts: readonly string[] = [
  ...['u', 'us', 'i', 'no', 'number', 'may'],
  ...spacedGrades,
  ...routeWords,
  ...routeFirst,
  ...months,
  ...labelWords,
];

/** What looks like a figure at token `i` and is a name: SS-1h, US 20, #4, 7:30 am, TA-10, 12/25. Undefined for a figure. */
export function readName(tokens: Tokens, i: number): NameRead | undefined {
  const first = at(tokens, i);
  if (first.kind === 'number') return readNumberName(tokens, i);
  if (first.text === '#') return readSieve(tokens, i, i + 1);
  if (first.kind !== 'letters') return undefined;
  if (numberWords.has(first.text)) return clockName(tokens, i);
  return readCode(tokens, i) ?? readLabelled(tokens, i);
}

function name(sort: Name['sort'], next: number): NameRead {
  return { sort, next };
}

function clockName(tokens: Tokens, i: number): NameRead | undefined {
  const next = readClock(tokens, i);
  return next === undefined ? undefined : name('clock', next);
}

/** Dates, telephone numbers, part numbers and times. */
function readNumberName(tokens: Tokens, i: number): NameRead | undefined {
  const first = at(tokens, i);
  if (first.style === 'odd' || isListMark(tokens, i)) return name('other', i + 1);
  const clock = clockName(tokens, i);
  if (clock) return clock;
  return readChain(tokens, i) ?? readGlued(tokens, i) ?? readYear(tokens, i) ?? readCalled(tokens, i);
}

/** `1) 12 ft wide`: the number of a line in a list. */
function isListMark(tokens: Tokens, i: number): boolean {
  const close = at(tokens, i + 1);
  const opens = i === 0 || at(tokens, i - 1).text === '\n';
  return opens && close.text === ')' && !close.gap && at(tokens, i + 2).gap && at(tokens, i + 2).kind !== 'end';
}

/** Numbers joined by the same sign: 6/15/2024, 12/25, 24/7, 2024-05-12, 555-1234, 10-4. */
function readChain(tokens: Tokens, i: number): NameRead | undefined {
  const sign = at(tokens, i + 1);
  if ((sign.text !== '/' && sign.text !== '-') || sign.gap || !plainWhole(at(tokens, i))) return undefined;
  let next = i + 1;
  let numbers = 1;
  while (at(tokens, next).text === sign.text && !at(tokens, next).gap) {
    const number = at(tokens, next + 1);
    if (number.gap || !plainWhole(number)) break;
    next += 2;
    numbers++;
  }
  if (numbers === 1) return undefined;
  if (numbers > 2) return mixedRange(tokens, i) || readUnit(tokens, next) ? undefined : name('other', next);
  const [a, b] = [at(tokens, i), at(tokens, i + 2)];
  if (sign.text === '-') {
    const phone = a.raw.length === 3 && b.raw.length === 4;
    return phone && !readUnit(tokens, next) ? name('other', next) : undefined;
  }
  return a.value + b.value === 100 || readFraction(tokens, i) ? undefined : name('other', next);
}

/** `1-1/2-2 in` is a range, not a date: a mixed number in it. */
function mixedRange(tokens: Tokens, i: number): boolean {
  return [i, i + 2, i + 4].some((k) => at(tokens, k + 1).text === '-' && readFraction(tokens, k + 2) !== undefined);
}

/** 140M, 1e9: letters glued to a number that are no unit. */
function readGlued(tokens: Tokens, i: number): NameRead | undefined {
  const letters = at(tokens, i + 1);
  if (letters.kind !== 'letters' || letters.gap || gluedJoins.has(letters.text)) return undefined;
  const after = at(tokens, i + 2);
  const digits = after.kind === 'number' && !after.gap;
  if (isDimensionLetter(tokens, i + 1)) return undefined;
  if (readUnit(tokens, i + 1) && !isDecade(tokens, i)) return undefined;
  if (gluedWords.has(letters.text)) return undefined;
  if (letters.raw === 'k' || (letters.text === 'k' && readUnit(tokens, i + 2))) return undefined;
  if (letters.text.length <= 2 || (digits && letters.text.length === 3)) return name('other', digits ? i + 3 : i + 2);
  return undefined;
}

/** 40s, 1990s: a decade glued to its s; `45s` is seconds. */
function isDecade(tokens: Tokens, i: number): boolean {
  const number = at(tokens, i);
  if (at(tokens, i + 1).raw !== 's' || !plainWhole(number) || !number.raw.endsWith('0')) return false;
  return number.value >= 20 && number.value < 2100 && readUnit(tokens, i + 1)?.unit === 's';
}

function readYear(tokens: Tokens, i: number): NameRead | undefined {
  const year = at(tokens, i);
  if (year.raw.length !== 4 || year.value < 1950 || year.value > 2049) return undefined;
  const said = yearWords.has(at(tokens, i - 1).text) || months.has(at(tokens, i - 1).text);
  return said && !measures(tokens, i + 1) ? name('other', i + 1) : undefined;
}

function readCalled(tokens: Tokens, i: number): NameRead | undefined {
  const dialled = at(tokens, i).raw === '911' || at(tokens, i).raw === '811';
  return dialled && callWords.has(at(tokens, i - 1).text) ? name('other', i + 1) : undefined;
}

/** Letters glued to digits, or joined to them by a hyphen: SS-1h, CRS-2P, TA-10, W20-1a, I-80, F-250. */
function readCode(tokens: Tokens, i: number): NameRead | undefined {
  const first = at(tokens, i);
  let next = i + 1;
  if (at(tokens, next).text === '-' && !at(tokens, next).gap) next++;
  else if (spacedCode(tokens, i)) return endOfCode(tokens, i, i + 1);
  if (at(tokens, next).kind !== 'number' || at(tokens, next).gap) return undefined;
  if (notCodes.has(first.text) || (first.raw === 'm' && next === i + 1)) return undefined;
  return endOfCode(tokens, i, next);
}

/** PG 64-22, RC 250: a grade with a blank, unless a unit shows a figure. */
function spacedCode(tokens: Tokens, i: number): boolean {
  if (!spacedGrades.has(at(tokens, i).text) || at(tokens, i + 1).kind !== 'number') return false;
  return !measures(tokens, i + 2) || at(tokens, i).text === 'pg';
}

function endOfCode(tokens: Tokens, i: number, number: number): NameRead {
  const first = at(tokens, i).text;
  let next = number + 1;
  for (let parts = 0; parts < 4; parts++) {
    const token = at(tokens, next);
    if (token.gap && !(first === 'pg' && token.text === '-' && !at(tokens, next + 1).gap)) break;
    if (token.kind === 'letters' && token.text.length <= 2 && token.text !== 'x') next++;
    else if (token.text === '-' && at(tokens, next + 1).kind === 'number' && !at(tokens, next + 1).gap) next += 2;
    else break;
  }
  if (first === 'i' || routeWords.has(first)) return name('route', next);
  return name(gradeLetters.has(first) ? 'grade' : 'other', next);
}

/** A word and its number: US 20, Hwy 12, county road 7, No. 4, sheet 3, June 15. */
function readLabelled(tokens: Tokens, i: number): NameRead | undefined {
  const first = at(tokens, i);
  const second = at(tokens, i + 1);
  if (first.text === 'u' && second.text === '.' && at(tokens, i + 2).text === 's') {
    return numbered(tokens, at(tokens, i + 3).text === '.' ? i + 4 : i + 3, 'route');
  }
  if (first.text === 'us' || first.raw === 'I') {
    const onRoad = first.raw === 'US' || (first.raw === 'I' && onRoadWords.has(at(tokens, i - 1).text));
    if (onRoad && second.kind === 'number') return numbered(tokens, i + 1, 'route');
  }
  if (routeFirst.has(first.text) && routeSecond.has(second.text)) return numbered(tokens, i + 2, 'route');
  if (first.text !== 'us' && routeWords.has(first.text))
    return numbered(tokens, second.text === '.' ? i + 2 : i + 1, 'route');
  if (first.text === 'no' && second.text === '.') return readSieve(tokens, i, i + 2);
  if ((first.text === 'no' || first.text === 'number') && second.kind === 'number') {
    return sieveWords.has(at(tokens, i + 2).text) ? name('sieve', i + 2) : undefined;
  }
  if (months.has(first.text) || first.raw === 'May') return readDay(tokens, i);
  return labelWords.has(first.text) ? numbered(tokens, i + 1, 'other') : undefined;
}

function readSieve(tokens: Tokens, i: number, number: number): NameRead | undefined {
  const token = at(tokens, number);
  if (!plainWhole(token) || (number === i + 1 && token.gap) || readUnit(tokens, number + 1)?.spelled) return undefined;
  return name('sieve', number + 1);
}

function readDay(tokens: Tokens, i: number): NameRead | undefined {
  const day = at(tokens, i + 1);
  if (!plainWhole(day) || day.value < 1 || day.value > 31 || measures(tokens, i + 2)) return undefined;
  return name('other', i + 2);
}

function numbered(tokens: Tokens, i: number, sort: Name['sort']): NameRead | undefined {
  const number = at(tokens, i);
  if (!plainWhole(number) || measures(tokens, i + 1)) return undefined;
  return name(sort, i + 1);
}

/** True when what follows a number shows a measure after all: "county road 12 ft wide", "highway 24 wide", "US 20 tons". */
function measures(tokens: Tokens, i: number): boolean {
  const after = at(tokens, i);
  const dims = (after.text === 'x' || after.text === 'by' || after.text === '*') && at(tokens, i + 1).kind === 'number';
  return dims || after.text === '/' || roleWords.has(after.text) || readUnit(tokens, i) !== undefined;
}
