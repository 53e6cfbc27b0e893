import { jsonIn } from '../../rules/json.ts';
import type { Knowledge } from '../../rules/knowledge.ts';
import { book as words } from '../wording/book.en.ts';
import type { Change } from './change.ts';
import { readChange } from './read-change.ts';

/** Version of the form a book is saved in. */
const version = 1;

/** A whole book with all its changes, as JSON: joined with the book it came from, it changes nothing. */
export function bookToJson(changes: readonly Change[]): string {
  return `${JSON.stringify({ jobBook: version, changes }, null, 1)}\n`;
}

/** True for a text that could be a saved book. */
export const isWholeJson = (text: string): boolean => /^\uFEFF?\s*\{/.test(text);

/** The changes of a saved book; a text says what is wrong with it: then nothing of it is taken. */
export function readWholeJson(text: string, knowledge: Knowledge): Change[] | string {
  const saved = jsonIn(text.replace(/^\uFEFF/, ''))?.json;
  const { jobBook, changes } = (typeof saved === 'object' && saved !== null ? saved : {}) as Record<string, unknown>;
  if (typeof jobBook !== 'number' || !Array.isArray(changes)) return words.wrong.json;
  if (jobBook > version) return words.wrong.newerBook;
  const read: Change[] = [];
  for (const each of changes) {
    const change = readChange(each, knowledge);
    if (typeof change === 'string') return change;
    read.push(change);
  }
  return read;
}
