import { type Digits, isDigit, scanDigits } from './digits.ts';

/** A run of letters, a number in digits, or one sign. */
export interface Token {
  readonly kind: 'letters' | 'number' | 'sign' | 'end';
  /** Letters in lower case; a sign or a number as it stands. */
  readonly text: string;
  /** As typed, for the few units whose case matters. */
  readonly raw: string;
  /** White space (or the start of the text) before it. */
  readonly gap: boolean;
  readonly start: number;
  readonly end: number;
  readonly value: number;
  readonly style: Digits['style'] | undefined;
}

/** Never empty: a token of kind `end` closes it, and `at` answers that token beyond it. */
export type Tokens = readonly Token[];

/** The token at `i`, or the closing one. */
export function at(tokens: Tokens, i: number): Token {
  return tokens[i] ?? tokens[tokens.length - 1]!;
}

/** Splits plain text into tokens in one pass. */
export function lex(text: string): Token[] {
  const tokens: Token[] = [];
  let gap = true;
  let i = 0;
  while (i < text.length) {
    const code = text.charCodeAt(i);
    const start = i;
    if (isLetter(code)) {
      i = endOfLetters(text, i);
      if (!gap && tokens[tokens.length - 1]?.kind === 'number') i = beforeJoiner(text, start, i);
      const raw = text.slice(start, i);
      tokens.push(token('letters', raw.toLowerCase(), raw, gap, start, i));
    } else if (isDigit(text, i) || startsDecimal(text, i, tokens[tokens.length - 1])) {
      const digits = scanDigits(text, i);
      i = digits.end;
      const raw = text.slice(start, i);
      tokens.push({ kind: 'number', text: raw, raw, gap, start, end: i, value: digits.value, style: digits.style });
    } else {
      i++;
      const sign = code === 96 ? "'" : text[start]!;
      const blank = code !== 10 && (code <= 32 || (code > 0x7e && code !== 0xb0));
      if (blank) {
        gap = true;
        continue;
      }
      tokens.push(token('sign', sign, sign, gap, start, i));
    }
    gap = text[start] === '\n';
  }
  tokens.push(token('end', '', '', true, text.length, text.length));
  return tokens;
}

function token(kind: Token['kind'], text: string, raw: string, gap: boolean, start: number, end: number): Token {
  return { kind, text, raw, gap, start, end, value: 0, style: undefined };
}

/**
 * A point begins a decimal unless it ends a sentence typed without a blank ("deep.12 ft"). After a nought to come
 * ("rate.05") or a word as short as x, at or by it is a decimal again.
 */
function startsDecimal(text: string, i: number, last: Token | undefined): boolean {
  if (text[i] !== '.' || !isDigit(text, i + 1)) return false;
  if (!isLetter(text.charCodeAt(i - 1))) return true;
  return text[i + 1] === '0' || (last !== undefined && last.text.length <= 2);
}

/** Letters, with the apostrophe of don't and o'clock. */
function endOfLetters(text: string, from: number): number {
  let end = from;
  while (isLetter(text.charCodeAt(end)) || (text[end] === "'" && end > from && isLetter(text.charCodeAt(end + 1))))
    end++;
  return end;
}

/** `12ftx150ft`: between two numbers a unit ends before its x or by. */
function beforeJoiner(text: string, start: number, end: number): number {
  if (!isDigit(text, end) && !(text[end] === '.' && isDigit(text, end + 1))) return end;
  const last = text.slice(end - 2, end).toLowerCase();
  if (last === 'by' && end - start > 2) return end - 2;
  return last[1] === 'x' && end - start > 1 ? end - 1 : end;
}

function isLetter(code: number): boolean {
  if (code < 0x80) return (code | 32) >= 97 && (code | 32) <= 122;
  if (code < 0xc0) return false;
  if (code < 0x2000) return code !== 0xd7 && code !== 0xf7;
  return code >= 0x3041 && code < 0xd800;
}
