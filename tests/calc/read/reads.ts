import { readFileSync } from 'node:fs';
import { read } from '../../../src/calc/read/read.ts';
import type { Figure, Item, Name, ReadingOptions } from '../../../src/calc/read/reading.ts';

/** What a line of the corpus expects of one figure or name. */
export interface Want {
  readonly number?: number;
  readonly low?: number;
  readonly high?: number;
  readonly unit?: string;
  readonly unclear?: string | true;
  readonly bound?: string;
  readonly about?: true;
  readonly trend?: string;
  readonly parts?: readonly [number, number];
  readonly name?: string;
}

export interface CorpusLine {
  readonly id: number;
  readonly text: string;
  readonly want: readonly Want[];
  readonly why?: string;
}

/** The lines of a corpus file beside tests/corpus. */
export function corpus(file: string): string[] {
  const path = new URL(`../../corpus/${file}`, import.meta.url);
  return readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '');
}

export function corpusLines(file: string): CorpusLine[] {
  return corpus(file).map((line) => JSON.parse(line) as CorpusLine);
}

export function telling(text: string, options?: ReadingOptions): (Figure | Name)[] {
  return read(text, options).filter((item) => item.kind === 'figure' || item.kind === 'name');
}

export function figures(text: string, options?: ReadingOptions): Figure[] {
  return read(text, options).filter((item) => item.kind === 'figure');
}

/** The one figure of a text. */
export function figure(text: string, options?: ReadingOptions): Figure {
  const found = figures(text, options);
  if (found.length !== 1) throw new Error(`${JSON.stringify(text)} holds ${found.length} figures, not one`);
  return found[0]!;
}

/** A short form of a reading, to compare whole sentences: words as they are, figures in brackets, names in angles. */
export function short(text: string, options?: ReadingOptions): string {
  return read(text, options).map(shortItem).join(' ');
}

function shortItem(item: Item): string {
  if (item.kind === 'word') return item.text;
  if (item.kind === 'mark') return item.text === '\n' ? '\\n' : item.text;
  if (item.kind === 'name') return `<${item.sort} ${item.text}>`;
  const number = item.parts ? item.parts.join(':') : item.low === undefined ? item.number : `${item.low}..${item.high}`;
  const unclear = item.unclear && `${item.unclear}?`;
  const said = [item.bound, item.about && 'about', number, item.unit, unclear, item.trend, item.manner];
  return `[${said.filter((part) => part !== undefined).join(' ')}]`;
}
