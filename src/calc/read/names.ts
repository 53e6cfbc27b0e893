import { readCode } from './codes.ts';
import { plainWhole } from './fraction.ts';
import { at, type Tokens } from './lexer.ts';
import { clockName, measures, type NameRead, name } from './name-read.ts';
import {
  labelWords,
  months,
  onRoadWords,
  routeFirst,
  routeSecond,
  routeWords,
  sieveWords,
  spacedGrades,
} from './name-words.ts';
import { readNumberName } from './number-names.ts';
import { numberWords } from './number-words.ts';
import type { Name } from './reading.ts';
import { readUnit } from './unit.ts';

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
  if (first.text === '#') return at(tokens, i + 1).gap ? undefined : readSieve(tokens, i + 1);
  if (first.kind !== 'letters') return undefined;
  if (numberWords.has(first.text)) return clockName(tokens, i);
  return readCode(tokens, i) ?? readLabelled(tokens, i);
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
  if (first.text !== 'us' && routeWords.has(first.text)) {
    return numbered(tokens, second.text === '.' ? i + 2 : i + 1, 'route');
  }
  if (first.text === 'no' && second.text === '.') return measures(tokens, i + 3) ? undefined : readSieve(tokens, i + 2);
  if ((first.text === 'no' || first.text === 'number') && second.kind === 'number') {
    return sieveWords.has(at(tokens, i + 2).text) ? name('sieve', i + 2) : undefined;
  }
  if (months.has(first.text) || first.raw === 'May') return readDay(tokens, i);
  return labelWords.has(first.text) ? numbered(tokens, i + 1, 'other') : undefined;
}

function readSieve(tokens: Tokens, number: number): NameRead | undefined {
  const next = number + 1;
  const fraction = at(tokens, next).text === '/' && at(tokens, next + 1).kind === 'number';
  return plainWhole(at(tokens, number)) && !fraction && !readUnit(tokens, next) ? name('sieve', next) : undefined;
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
