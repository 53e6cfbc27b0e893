import type { Span } from './tokens.ts';

/** A line of a text and where it stands; lines count from 1. */
export interface Line {
  readonly number: number;
  readonly text: string;
  readonly at: Span;
}

/** The lines of a text. */
export function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  let start = 0;
  for (const [i, line] of text.split('\n').entries()) {
    const end = start + line.length;
    lines.push({ number: i + 1, text: line.replace(/\r$/, ''), at: [start, end] });
    start = end + 1;
  }
  return lines;
}

/** The line of the text that a position is on. */
export const lineAt = (text: string, position: number): number => text.slice(0, position).split('\n').length;
