/**
 * The characters of a text brought to plain ones, each knowing where it stood. Unicode's own compatibility forms are no
 * help here: they turn 1½ into 11⁄2 and 50⁰F into 500F, so every character that matters is mapped by this table.
 */
export interface PlainText {
  readonly text: string;
  /** For each character of `text`, the position it came from; absent when the two texts are the same. */
  readonly from?: readonly number[];
}

const same: readonly (readonly [plain: string, ...typed: string[]])[] = [
  ["'", '\u2018', '\u2019', '\u2032', '\u00b4', '\u02b9', '\u02bc', '\u201b'],
  ['"', '\u201c', '\u201d', '\u2033', '\u02ba', '\u201e', '\u201f'],
  ['-', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2015', '\u2212'],
  ['x', '\u00d7', '\u2715', '\u2716', '\u2a2f', '\u2573'],
  ['/', '\u2044', '\u2215'],
  ['<=', '\u2264', '\u2a7d'],
  ['>=', '\u2265', '\u2a7e'],
  ['+/-', '\u00b1'],
  ['~', '\u2248', '\u223c'],
  ['*', '\u2217', '\u22c5'],
  ['.', '\u2026', '\u3002'],
  [',', '\u3001'],
  [' ', '\u00a0', '\u2007', '\u2009', '\u202f', '\u205f', '\u3000', '\u2022', '\u00bf', '\u00a1'],
  ['', '\u200b', '\u200c', '\u200d', '\u2060', '\ufeff', '\u00ad', '\ufe0e', '\ufe0f'],
  ['\u00b0', '\u02da', '\u00ba'],
  ['m2', '\u33a1'],
  ['m3', '\u33a5'],
  ['mm', '\u339c'],
  ['cm', '\u339d'],
  ['km', '\u339e'],
  ['kg', '\u338f'],
];

const fractions = '¼1/4 ½1/2 ¾3/4 ⅐1/7 ⅑1/9 ⅒1/10 ⅓1/3 ⅔2/3 ⅕1/5 ⅖2/5 ⅗3/5 ⅘4/5 ⅙1/6 ⅚5/6 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8 ⅟1/ ↉0/3';
const raised = '\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079';

const plainOf = new Map<number, string>();
/** Held apart from a digit before it: 1¹⁄₂ is no 11/2, and from a letter too where it is a number of its own: 1½, mile½. */
const raisedDigits = new Set<number>();
const glyphs = new Set<number>();
for (const [plain, ...typed] of same) for (const one of typed) plainOf.set(one.charCodeAt(0), plain);
for (const one of fractions.split(' ')) glyphs.add(set(one.charCodeAt(0), one.slice(1)));
for (let digit = 0; digit < 10; digit++) {
  raisedDigits.add(set(raised.charCodeAt(digit), String(digit)));
  set(0x2080 + digit, String(digit));
}
for (let code = 0xff01; code <= 0xff5e; code++) set(code, String.fromCharCode(code - 0xfee0));
for (let code = 0x2000; code <= 0x200a; code++) if (!plainOf.has(code)) set(code, ' ');

function set(code: number, plain: string): number {
  plainOf.set(code, plain);
  return code;
}

/** `text` in plain characters. A text that is plain already comes back as it is, with no map. */
export function plainText(text: string): PlainText {
  let first = 0;
  while (first < text.length && text.charCodeAt(first) < 0x80) first++;
  if (first === text.length) return { text };

  const parts: string[] = [text.slice(0, first)];
  const from = Array.from({ length: first }, (_, i) => i);
  let last = text[first - 1] ?? ' ';
  for (let i = first; i < text.length; i++) {
    const plain = plainAt(text, i, last);
    if (plain === '') continue;
    parts.push(plain);
    for (let k = 0; k < plain.length; k++) from.push(i);
    last = plain[plain.length - 1]!;
  }
  return { text: parts.join(''), from };
}

function plainAt(text: string, i: number, last: string): string {
  const code = text.charCodeAt(i);
  if (code < 0x80) return text[i]!;
  if (isAccent(code)) return '';
  if (code === 0x2070 && isDigit(last) && endsDegree(text, i + 1)) return '\u00b0';
  if (code === 0xb7) return isDigit(text[i + 1] ?? ' ') ? ' ' : '-'; // lb/yd²·in
  if (code === 0x2009 || code === 0x202f) return groupsThousands(text, i) ? '' : ' ';
  const plain = plainOf.get(code);
  if (plain === undefined) return text[i]!;
  const number = glyphs.has(code);
  const held = (isDigit(last) && (number || raisedDigits.has(code))) || (number && isLetter(last));
  const runsOn =
    plain.length > 1 && isDigit(plain[plain.length - 1]!) && '0123456789.,/'.includes(nextPlain(text, i + 1));
  return `${held ? ' ' : ''}${plain}${runsOn ? ' ' : ''}`;
}

/** The first plain character from `i` on: a digit right after ½ must not run into it. */
function nextPlain(text: string, i: number): string {
  for (let k = i; k < text.length; k++) {
    const code = text.charCodeAt(k);
    const plain = isAccent(code) ? '' : (plainOf.get(code) ?? text[k]!);
    if (plain !== '') return plain[0]!;
  }
  return ' ';
}

/** Accents written apart from their letter. */
function isAccent(code: number): boolean {
  return code >= 0x300 && code <= 0x36f;
}

/** A raised nought is a degree sign before F or C or at the end of the figure. */
function endsDegree(text: string, i: number): boolean {
  const next = text[i] ?? ' ';
  return 'FCfc ,.;?!)\n'.includes(next);
}

/** A thin space stands for the comma of 1,250 when three digits follow and no fourth. */
function groupsThousands(text: string, i: number): boolean {
  if (!isDigit(text[i - 1] ?? ' ')) return false;
  return [1, 2, 3].every((k) => isDigit(text[i + k] ?? ' ')) && !isDigit(text[i + 4] ?? ' ');
}

function isLetter(one: string): boolean {
  return one.toLowerCase() !== one.toUpperCase();
}

function isDigit(one: string): boolean {
  return one >= '0' && one <= '9';
}
