import { at, type Tokens } from './lexer.ts';
import { joinedNouns } from './name-words.ts';
import { roleWords } from './near-words.ts';
import { numberWords, partWords } from './number-words.ts';
import { readUnit } from './unit.ts';

const small = ['zero', 'one', 'two', 'three', 'four', 'five', 'six'];

const ordinals = new Set(['st', 'nd', 'rd', 'th']);
const notNouns = new Set(['to', 'x', 'by', 'and', 'or', 'thru', 'ish', 'k']);

/** A word over the tokens up to `next`. */
export interface WordRead {
  readonly text: string;
  readonly next: number;
}

/**
 * A number that is part of a word: two-lane, 4-lane, "two lane road", three-axle, 1st. The numbers one to six come out
 * spelled, so that `2 lane` and `two-lane` are one word. Undefined for a number of its own ("2 lanes", "12-foot").
 */
export function readNumberedWord(tokens: Tokens, i: number): WordRead | undefined {
  const first = at(tokens, i);
  const second = at(tokens, i + 1);
  const ordinal = first.kind === 'number' && !second.gap && ordinals.has(second.text);
  if (ordinal) return { text: first.raw + second.text, next: i + 2 };
  const number = numberText(tokens, i);
  if (number === undefined) return undefined;
  const hyphen = second.text === '-' && !second.gap;
  const noun = at(tokens, hyphen ? i + 2 : i + 1);
  if (noun.kind !== 'letters' || (hyphen && noun.gap)) return undefined;
  if (!hyphen)
    return joinedNouns.has(noun.text) && small.includes(number) && !readUnit(tokens, i + 1)
      ? { text: `${number}-${noun.text}`, next: i + 2 }
      : undefined;
  if (roleWords.has(noun.text) && noun.text !== 'lift') return undefined;
  if (notNouns.has(noun.text) && !(noun.text === 'by' && first.kind === 'letters')) return undefined;
  if (numberWords.has(noun.text) || partWords.has(noun.text) || readUnit(tokens, i + 1) || readUnit(tokens, i + 2))
    return undefined;
  return endOfWord(tokens, `${number}-${noun.text}`, i + 3);
}

function numberText(tokens: Tokens, i: number): string | undefined {
  const first = at(tokens, i);
  if (first.kind === 'letters') return numberWords.get(first.text)?.spanish === false ? first.text : undefined;
  if (first.style !== 'whole') return undefined;
  return small[first.value] ?? first.raw;
}

/** Letters, with what hyphens join to them: cut-back, low-to-high. A number after the hyphen is left to itself. */
export function readWord(tokens: Tokens, i: number): WordRead {
  const first = at(tokens, i);
  const digits = at(tokens, i + 1);
  if (digits.kind === 'number' && !digits.gap && digits.raw.length === 1)
    return { text: first.text + digits.raw, next: i + 2 }; // yd2
  return endOfWord(tokens, first.text, i + 1);
}

function endOfWord(tokens: Tokens, start: string, i: number): WordRead {
  let text = start;
  let next = i;
  for (;;) {
    const hyphen = at(tokens, next);
    const more = at(tokens, next + 1);
    if (hyphen.text !== '-' || hyphen.gap || more.kind !== 'letters' || more.gap) return { text, next };
    text += `-${more.text}`;
    next += 2;
  }
}
