import { readClock } from './clock.ts';
import { at, type Tokens } from './lexer.ts';
import { roleWords } from './near-words.ts';
import type { Name } from './reading.ts';
import { readUnit } from './unit.ts';

/** A name as read: of what sort, and the token after it. */
export interface NameRead {
  readonly sort: Name['sort'];
  readonly next: number;
}

export function name(sort: Name['sort'], next: number): NameRead {
  return { sort, next };
}

/** The time of day at token `i`, as a name. */
export function clockName(tokens: Tokens, i: number): NameRead | undefined {
  const next = readClock(tokens, i);
  return next === undefined ? undefined : name('clock', next);
}

/** True when what follows a number shows a measure after all: "county road 12 ft wide", "highway 24 wide", "US 20 tons". */
export function measures(tokens: Tokens, i: number): boolean {
  const after = at(tokens, i);
  const dims = (after.text === 'x' || after.text === 'by' || after.text === '*') && at(tokens, i + 1).kind === 'number';
  return dims || after.text === '/' || roleWords.has(after.text) || readUnit(tokens, i) !== undefined;
}
