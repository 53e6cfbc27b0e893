import { at, type Tokens } from './lexer.ts';
import { numberWords } from './number-words.ts';
import { byFirstWord, phraseAt } from './tokens.ts';

/** Words after a number that make it a time of day. */
const after: readonly (readonly string[])[] = [
  ['am'],
  ['pm'],
  ['a', '.', 'm'],
  ['p', '.', 'm'],
  ["o'clock"],
  ['oclock'],
  ['in', 'the', 'morning'],
  ['in', 'the', 'afternoon'],
  ['in', 'the', 'evening'],
  ['at', 'night'],
  ['noon'],
  ['de', 'la', 'mañana'],
  ['de', 'la', 'manana'],
  ['de', 'la', 'tarde'],
  ['de', 'la', 'noche'],
];

const shown = byFirstWord(after.map((words) => ({ words })));

/** Words that make it one only when "at" or the like stands before. */
const dayWords = new Set(['tomorrow', 'tonight', 'today', 'this', 'sharp', 'mañana']);

/** Words before h:mm that make it a time; `at 1:20` may still be a slope, so the hour must be past one. */
const before = new Set([
  'at',
  'by',
  'until',
  'till',
  'til',
  'before',
  'after',
  'from',
  'since',
  'las',
  'around',
  'about',
  'to',
  '-',
]);
const atWords = new Set(['at', 'by', 'until', 'till', 'til', 'las']);
const halfDays = new Set(['am', 'pm', 'a', 'p']);
const spanWords = new Set(['to', '-', 'until']);
const quarters = new Set(['00', '15', '30', '45']);

/** The token after a time of day that begins at `i`: `7:30 am`, `7 to 5 pm`, "10 in the morning". Undefined for a plain number. */
export function readClock(tokens: Tokens, i: number): number | undefined {
  const hour = readHour(tokens, i);
  if (hour === undefined) return undefined;
  const end = readShown(tokens, hour);
  if (end !== undefined) return end;
  if (atWords.has(at(tokens, i - 1).text) && dayWords.has(at(tokens, hour).text)) return hour;
  if (at(tokens, i + 1).text === ':' && tellsTime(tokens, i)) return hour;
  const join = at(tokens, hour).text;
  if (join !== 'to' && join !== '-' && join !== 'until' && join !== 'and') return undefined;
  const second = readHour(tokens, hour + 1);
  return second !== undefined && readHalfDay(tokens, second) !== undefined ? hour : undefined;
}

/** The token after `7`, `seven`, `7:30` or `10:30:00`, when it can be a time at all. */
function readHour(tokens: Tokens, i: number): number | undefined {
  const hour = at(tokens, i);
  const value = hour.style === 'whole' ? hour.value : (numberWords.get(hour.text)?.value ?? 99);
  if (value > 24 || hour.raw.includes(',')) return undefined;
  let next = i + 1;
  while (next < i + 5 && at(tokens, next).text === ':' && !at(tokens, next).gap && isMinutes(tokens, next + 1))
    next += 2;
  return next;
}

function isMinutes(tokens: Tokens, i: number): boolean {
  const minutes = at(tokens, i);
  return !minutes.gap && minutes.style === 'whole' && minutes.raw.length === 2 && minutes.value < 60;
}

function readShown(tokens: Tokens, i: number): number | undefined {
  if (at(tokens, i).kind !== 'letters') return undefined;
  const words = phraseAt(shown, tokens, i)?.words;
  if (!words) return undefined;
  const next = i + words.length;
  return words[1] === '.' && at(tokens, next).text === '.' && !at(tokens, next).gap && !endsText(tokens, next + 1)
    ? next + 1
    : next;
}

function readHalfDay(tokens: Tokens, i: number): number | undefined {
  return halfDays.has(at(tokens, i).text) ? readShown(tokens, i) : undefined;
}

/** h:mm after "at" and the like, or with two colons. */
function tellsTime(tokens: Tokens, i: number): boolean {
  if (!isMinutes(tokens, i + 2)) return false;
  if (at(tokens, i + 3).text === ':') return true;
  const hour = at(tokens, i).value;
  const span = spanWords.has(at(tokens, i + 3).text) && readHour(tokens, i + 4) !== undefined;
  return (span || before.has(at(tokens, i - 1).text)) && (hour > 1 || quarters.has(at(tokens, i + 2).raw));
}

function endsText(tokens: Tokens, i: number): boolean {
  return at(tokens, i).kind === 'end';
}
