import { toBase } from '../quantity.ts';

/** A place in the text, in UTF-16 positions. */
export type Span = readonly [start: number, end: number];

export type LengthUnit = 'in' | 'ft' | 'yd' | 'm' | 'mm' | 'cm';

export type Token =
  | { readonly kind: 'number'; readonly value: number; readonly unit?: LengthUnit; readonly at: Span }
  | {
      readonly kind: 'station';
      readonly base: number;
      readonly metric: boolean;
      readonly text: string;
      readonly at: Span;
    }
  | { readonly kind: 'word' | 'sign'; readonly text: string; readonly at: Span };

const units: readonly (readonly [RegExp, LengthUnit])[] = [
  [/\s{0,2}(?:inches|inch|in\b\.?|pulgadas?|"|”|″|'')/iy, 'in'],
  [/\s{0,2}(?:feet|foot|ft\b\.?|pies?\b|'|′)/iy, 'ft'],
  [/\s{0,2}(?:yards?|yds?)\b/iy, 'yd'],
  [/\s{0,2}(?:mm|millimet(?:er|re)s?|milímetros?|milimetros?)\b/iy, 'mm'],
  [/\s{0,2}(?:cm|centimet(?:er|re)s?)\b/iy, 'cm'],
  [/\s{0,2}(?:met(?:er|re)s?|metros?|m)\b/iy, 'm'],
];

const station = /(\d{1,4})\+(\d{2,3})(?:\.(\d{1,2}))?(?![\d+])/y;
const mixed = /(-?\d{1,4})(?: |-)(\d{1,2})\/(\d{1,2})(?![\d/])/y;
const fraction = /(-?)(\d{1,2})\/(\d{1,2})(?![\d/])/y;
const vulgar = /(-?)(\d{0,4}) ?([¼½¾⅛⅜⅝⅞])/y;
/** A decimal comma, where metres come right behind it. */
const comma = /\d{1,4},\d{1,2}(?=\s?(?:m|met(?:er|re)s?|metros?)\b)/iy;
const plain = /-?(?:\d{1,6}(?:\.\d{1,6})?|\.\d{1,6})/y;
const word = /\p{L}[\p{L}\p{M}]{0,40}/uy;
const eighths: Readonly<Record<string, number>> = { '¼': 2, '½': 4, '¾': 6, '⅛': 1, '⅜': 3, '⅝': 5, '⅞': 7 };

/** Reads a text into the numbers, stations, words and signs of a list of readings. Never throws; the work grows with the length. */
export function tokensOf(text: string, from = 0, to = text.length): Token[] {
  const out: Token[] = [];
  let i = from;
  while (i < to) {
    const token = tokenAt(text, i);
    if (token && token.at[1] <= to) {
      out.push(token);
      i = token.at[1];
    } else i++;
  }
  return out;
}

function tokenAt(text: string, i: number): Token | undefined {
  const char = text[i]!;
  if (char === ' ' || char === '\r') return undefined;
  const joined = i > 0 && /[\p{L}\d.]/u.test(text[i - 1]!);
  return (
    (joined && char === '-' ? undefined : (stationAt(text, i) ?? numberAt(text, i))) ??
    wordAt(text, i) ?? { kind: 'sign', text: char, at: [i, i + 1] }
  );
}

const at = (pattern: RegExp, text: string, i: number): RegExpExecArray | null => {
  pattern.lastIndex = i;
  return pattern.exec(text);
};

/** Two digits after the plus are feet of a 100 ft station, three are metres of a kilometre. */
function stationAt(text: string, i: number): Token | undefined {
  const found = at(station, text, i);
  if (!found) return undefined;
  const [all, whole, rest, part = '0'] = found;
  const metric = rest!.length === 3;
  const number = Number(whole) * (metric ? 1000 : 100) + Number(`${rest}.${part}`);
  return { kind: 'station', base: toBase(number, metric ? 'm' : 'ft'), metric, text: all, at: [i, i + all.length] };
}

function numberAt(text: string, i: number): Token | undefined {
  const read = valueAt(text, i);
  if (!read) return undefined;
  const unit = units.find(([pattern]) => at(pattern, text, read.end));
  const end = unit ? unit[0].lastIndex : read.end;
  return { kind: 'number', value: read.value, at: [i, end], ...(unit ? { unit: unit[1] } : {}) };
}

function valueAt(text: string, i: number): { value: number; end: number } | undefined {
  const whole = at(mixed, text, i);
  if (whole && Number(whole[3]) > 0) {
    const [all, n, a, b] = whole;
    const part = Number(a) / Number(b);
    return { value: n!.startsWith('-') ? Number(n) - part : Number(n) + part, end: i + all.length };
  }
  const part = at(fraction, text, i);
  if (part && Number(part[3]) > 0)
    return { value: (Number(part[2]) / Number(part[3])) * (part[1] ? -1 : 1), end: i + part[0].length };
  const sign = at(vulgar, text, i);
  if (sign) return { value: (Number(sign[2]) + eighths[sign[3]!]! / 8) * (sign[1] ? -1 : 1), end: i + sign[0].length };
  const metres = at(comma, text, i);
  if (metres) return { value: Number(metres[0].replace(',', '.')), end: i + metres[0].length };
  const number = at(plain, text, i);
  return number ? { value: Number(number[0]), end: i + number[0].length } : undefined;
}

function wordAt(text: string, i: number): Token | undefined {
  const found = at(word, text, i);
  return found ? { kind: 'word', text: found[0].toLowerCase(), at: [i, i + found[0].length] } : undefined;
}
