/** A number in digits, as it stands in a text. */
export interface Digits {
  readonly end: number;
  readonly value: number;
  /** `whole` 1,250; `decimal` 12.5; `comma` 3,5 (which may be a list); `odd` no figure at all: 1.2.3 or forty digits. */
  readonly style: 'whole' | 'decimal' | 'comma' | 'odd';
}

/** More digits than a double can hold are a part number, not a figure. */
const mostDigits = 15;

/** The number that begins at `start`, which is a digit or a point before a digit. Never reads a value it is not sure of. */
export function scanDigits(text: string, start: number): Digits {
  const whole = run(text, start);
  if (text[whole] === ',') {
    const grouped = groups(text, start, whole, ',');
    if (grouped > whole) return withDecimals(text, start, grouped);
    const comma = commaDecimals(text, start, whole);
    if (comma > whole) return done(text.slice(start, comma).replace(',', '.'), comma, 'comma');
  }
  return withDecimals(text, start, whole);
}

function withDecimals(text: string, start: number, whole: number): Digits {
  const end = decimals(text, whole);
  if (end > whole && whole > start) {
    const european = groups(text, start, whole, '.');
    const tail = commaTail(text, european);
    if (european > whole && (tail > european || european > whole + 4)) {
      return done(text.slice(start, tail).replaceAll('.', '').replace(',', '.'), tail, 'decimal');
    }
    if (decimals(text, end) > end) return { end: runOfDots(text, end), value: 0, style: 'odd' };
  }
  return done(text.slice(start, end).replaceAll(',', ''), end, end > whole || start === whole ? 'decimal' : 'whole');
}

function done(digits: string, end: number, style: Digits['style']): Digits {
  if (digits.length > mostDigits + 1) return { end, value: 0, style: 'odd' };
  return { end, value: Number(digits), style };
}

/** End of `1,250,000`: groups of exactly three after one to three digits. */
function groups(text: string, start: number, whole: number, mark: string): number {
  if (whole - start > 3 || whole === start || text[start] === '0') return whole;
  let end = whole;
  while (text[end] === mark && run(text, end + 1) === end + 4) end += 4;
  return end;
}

/** End of `3,5` or `0,400`; a longer list of numbers (8,10,12) is left a list. */
function commaDecimals(text: string, start: number, whole: number): number {
  if (text[start - 1] === ',' && isDigit(text, start - 2)) return whole;
  const end = run(text, whole + 1);
  const most = whole - start === 1 && text[start] === '0' ? 4 : 2;
  if (end === whole + 1 || end > whole + 1 + most) return whole;
  return (text[end] === ',' || text[end] === '.') && isDigit(text, end + 1) ? whole : end;
}

/** End of the `,5` of 1.250,5. */
function commaTail(text: string, from: number): number {
  if (text[from] !== ',') return from;
  const end = run(text, from + 1);
  return end > from + 1 && end <= from + 3 ? end : from;
}

function decimals(text: string, from: number): number {
  return text[from] === '.' ? Math.max(run(text, from + 1), from + 1) - (isDigit(text, from + 1) ? 0 : 1) : from;
}

function runOfDots(text: string, from: number): number {
  let end = from;
  while (text[end] === '.' && isDigit(text, end + 1)) end = run(text, end + 1);
  return end;
}

function run(text: string, from: number): number {
  let end = from;
  while (isDigit(text, end)) end++;
  return end;
}

/** True when the character at `i` is one of 0 to 9. */
export function isDigit(text: string, i: number): boolean {
  const code = text.charCodeAt(i);
  return code >= 48 && code <= 57;
}
