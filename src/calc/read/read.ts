import { type PlainText, plainText } from './characters.ts';
import { settleChoices } from './choices.ts';
import { type Factor, readGroup } from './groups.ts';
import { readNumberedWord, readWord } from './joined-words.ts';
import { at, lex, type Token, type Tokens } from './lexer.ts';
import { looseSide } from './loose-side.ts';
import { type Measured, measured, toFigure } from './measured.ts';
import { readName } from './names.ts';
import { readPlace } from './places.ts';
import type { QuantityOptions } from './quantity-options.ts';
import { readRatio } from './ratios.ts';
import type { Item, Mark, Name, Place, ReadingOptions } from './reading.ts';
import { settle } from './settle.ts';
import { starts } from './starts.ts';
import { readTemperature } from './temperatures.ts';

/**
 * Reads any text into figures, words, names and marks, in the order they stand. Every number of the text comes out, as a
 * figure, in a name, or in a word (two-lane); positions are those of `text` as sent. Never throws, whatever the text; the
 * work grows with its length.
 */
export function read(text: string, options: ReadingOptions = {}): Item[] {
  const plain = plainText(text);
  const reader = new Reader(text, plain, lex(plain.text), options.units === 'metric');
  const items = reader.items();
  settleChoices(items, text);
  return settle(items, options);
}

const marks = new Set<string>(['.', ',', ';', '?', '!', ':', '\n', '(', ')']);
/** Signs that say something, passed on as words: 3 lifts @ 1 in. */
const telling = new Set(['@', '&', '=', '+', '/', '%', '$', '#', '<', '>', '~', '*']);

class Reader {
  private readonly text: string;
  private readonly plain: PlainText;
  private readonly tokens: Tokens;
  private readonly metric: boolean;
  private readonly out: Item[] = [];
  private groups = 0;
  /** The token after the last figure, to know what stands right behind one. */
  private afterFigure = -1;

  constructor(text: string, plain: PlainText, tokens: Tokens, metric: boolean) {
    this.text = text;
    this.plain = plain;
    this.tokens = tokens;
    this.metric = metric;
  }

  items(): Item[] {
    let i = 0;
    while (at(this.tokens, i).kind !== 'end') i = this.step(i);
    return this.out;
  }

  /** Reads what begins at token `i`; names before figures, figures before words. Returns the token after it. */
  private step(i: number): number {
    const { tokens } = this;
    const token = at(tokens, i);
    if (token.kind === 'sign' && marks.has(token.text)) return this.mark(i, token);
    if (!starts(tokens, i)) return this.rest(i, token);
    const place = readPlace(tokens, i);
    if (place?.span) {
      const span = measured(i, place.next, place.span.number, place.span.unit);
      span.form = `${place.sort}-span`;
      return this.figure(span);
    }
    if (place) return this.name(place.sort, i, place.next);
    const warm = readTemperature(tokens, i);
    if (warm) return this.figure(warm);
    const name = readName(tokens, i);
    if (name) return this.name(name.sort, i, name.next);
    const ratio = readRatio(tokens, i);
    if (ratio) return this.figure(ratio);
    const numbered = readNumberedWord(tokens, i);
    if (numbered) return this.word(numbered.text, i, numbered.next);
    const group = readGroup(tokens, i, this.around(i));
    return group ? this.group(group.factors, group.next) : this.rest(i, token);
  }

  private around(i: number): QuantityOptions {
    const last = this.out[this.out.length - 1];
    const near = this.afterFigure === i;
    const afterFeet = near && last?.kind === 'figure' && last.unit === 'ft';
    return { metric: this.metric, afterFigure: near, afterFeet, side: looseSide(this.out) };
  }

  private group(factors: readonly Factor[], next: number): number {
    if (factors.length === 1) return this.figure(factors[0]!.reach);
    const group = this.groups++;
    for (let index = 0; index < factors.length; index++) {
      const { reach, role } = factors[index]!;
      reach.group = group;
      reach.index = index;
      this.figure(reach);
      if (role !== undefined) this.word(at(this.tokens, role).text, role, role + 1);
    }
    return next;
  }

  private figure(read: Measured): number {
    const place = this.place(read.start, read.next);
    this.push(toFigure(read, place));
    this.afterFigure = read.next;
    return read.next;
  }

  private name(sort: Name['sort'], i: number, next: number): number {
    const place = this.place(i, next);
    this.push({ kind: 'name', sort, text: this.text.slice(...place), at: place });
    return next;
  }

  private word(text: string, i: number, next: number): number {
    this.push({ kind: 'word', text, at: this.place(i, next) });
    return next;
  }

  private mark(i: number, token: Token): number {
    let next = i + 1;
    while (token.text === '.' && at(this.tokens, next).text === '.') next++;
    this.push({ kind: 'mark', text: token.text as Mark['text'], at: this.place(i, next) });
    return next;
  }

  private rest(i: number, token: Token): number {
    if (token.kind === 'letters') {
      const word = readWord(this.tokens, i);
      return this.word(word.text, i, word.next);
    }
    if (token.text === '+' && at(this.tokens, i + 1).text === '/' && at(this.tokens, i + 2).text === '-') {
      return this.word('+/-', i, i + 3);
    }
    const next = at(this.tokens, i + 1);
    if ((token.text === '<' || token.text === '>') && next.text === '=' && !next.gap)
      return this.word(`${token.text}=`, i, i + 2);
    if (telling.has(token.text)) return this.word(token.text, i, i + 1);
    // A dash with blanks on both sides parts two thoughts, as a comma does; quotes and brackets say nothing.
    if (token.text === '-' && token.gap && at(this.tokens, i + 1).gap) {
      this.push({ kind: 'mark', text: ',', at: this.place(i, i + 1) });
    }
    return i + 1;
  }

  /** One character can stand for several (½ is 1, / and 2); what an item leaves of it belongs to no other, and a figure without a digit is none. */
  private push(item: Item): void {
    const end = this.out[this.out.length - 1]?.at[1] ?? 0;
    if (item.at[0] >= end) this.out.push(item);
    else if (item.at[1] > end && (item.kind !== 'figure' || /\p{N}/u.test(this.text.slice(end, item.at[1]))))
      this.out.push({ ...item, at: [end, item.at[1]] });
  }

  private place(start: number, next: number): Place {
    const first = at(this.tokens, start).start;
    const last = at(this.tokens, next - 1).end - 1;
    const { from } = this.plain;
    return from ? [from[first]!, from[last]! + 1] : [first, last + 1];
  }
}
