import { convert } from '../../calc/quantity.ts';
import type { Unit } from '../../calc/units.ts';
import type { RateRow, Rates } from '../../rules/rates.ts';
import type { Span } from '../reply.ts';
import { heardInRates as heard } from '../wording/rates-heard.ts';

/** A machine named in a question, and the rows of a file that fit it. */
export interface Machine {
  readonly at: Span;
  /** As it was typed, and where, without its number. */
  readonly said: string;
  readonly name: Span;
  readonly count: number;
  readonly fits: readonly RateRow[];
}

interface Size {
  readonly number: number;
  readonly unit: Unit | 'hp';
}

const partsOf = (machine: string): string[] => machine.split(/[\s-]+/);
/** The kind of machine a row is for: the last word of it. */
export const kindOf = ({ machine }: RateRow): string => partsOf(machine).at(-1)!;

/** The machines a question names, in its order. `kinds` are machines that may have no row in the file. */
export function machinesIn(question: string, { rows }: Rates, kinds: readonly string[]): Machine[] {
  const found: Machine[] = [];
  const free = (at: number): boolean => found.every((one) => at < one.at[0] || at >= one.at[1]);
  const known = new Set([...rows.map(kindOf), ...kinds]);
  for (const { 0: word, index } of question.matchAll(/[a-z]+/gi)) {
    const kind = [word, word.replace(/s$/i, '')].map((form) => form.toLowerCase()).find((form) => known.has(form));
    if (kind && free(index)) found.push(machineAt(question, index, word.length, rows, kind));
  }
  for (const { 0: text, 1: code, index } of question.matchAll(heard.codeAlone)) {
    if (!free(index)) continue;
    const fits = rows.filter((row) => isCode(row, code!) && row.unit);
    const at = [index, index + text.length] as const;
    found.push({ at, name: at, said: text, count: 1, fits });
  }
  // "A grader and a paver": what has no row must not drop out of the sum.
  const rest = found.length > 0 ? without(question, found) : '';
  for (const { 0: text, 1: word, index } of rest.matchAll(heard.another)) {
    if (heard.noMachine.includes(word!.toLowerCase())) continue;
    const at = [index, index + text.length] as const;
    found.push({ at, name: at, said: word!, count: 1, fits: [] });
  }
  return found.sort((a, b) => a.at[0] - b.at[0]);
}

/** The question with blanks where machines stand, so that all else keeps its place. */
export function without(question: string, machines: readonly Machine[]): string {
  return machines.reduce(
    (text, { at: [from, to] }) => text.slice(0, from) + ' '.repeat(to - from) + text.slice(to),
    question,
  );
}

/** Letters before and after a machine that may tell which one is meant. */
const widestLook = 120;

function machineAt(question: string, start: number, length: number, rows: readonly RateRow[], kind: string): Machine {
  const own = rows.filter((row) => kindOf(row) === kind);
  const words = new Set(own.flatMap(({ machine }) => partsOf(machine)));
  const sizes: Size[] = [];
  const named: string[] = [];
  let from = start;
  for (let more = true; more; ) {
    const near = Math.max(0, from - widestLook);
    const before = question.slice(near, from);
    const word = /(?<![a-z])([a-z]+)[\s-]+$/i.exec(before) ?? /(?<![\d.])(\d+)-$/.exec(before);
    const size = heard.sizeBefore.exec(before);
    const between = heard.wordsBetween.exec(before)?.at(-1);
    more = true;
    if (word && words.has(word[1]!.toLowerCase())) {
      named.push(word[1]!.toLowerCase());
      from = near + word.index;
    } else if (size) {
      sizes.push(sizeOf(size));
      from = near + size.index;
    } else if (between) from -= between.length;
    else more = false;
  }
  const first = from;
  const count = heard.countBefore.exec(question.slice(Math.max(0, from - widestLook), from));
  if (count) from -= count[0].trimStart().length;
  let to = start + length;
  const code = codeIn(question.slice(to, to + widestLook), rows);
  const after = code ? undefined : heard.sizeAfter.exec(question.slice(to, to + widestLook));
  if (after) sizes.push(sizeOf(after));
  to += code?.length ?? after?.[0].length ?? 0;
  const fits = own
    .filter(({ machine }) => named.every((name) => partsOf(machine).includes(name)))
    .filter((row) => sizes.every((size) => isOfSize(row, size)));
  return {
    at: [from, to],
    said: question.slice(first, to).trim(),
    name: [first, to],
    count: count ? (heard.counts[count[1]!.toLowerCase()] ?? Number(count[1])) : 1,
    fits: (code ? own.filter((row) => isCode(row, code.code)) : fits).filter(({ unit }) => unit),
  };
}

const isCode = ({ code }: RateRow, said: string): boolean => code.toLowerCase() === said.toLowerCase();

/** A code right behind the machine: one of the file, one that is called so, or four or five digits that measure nothing. */
function codeIn(after: string, rows: readonly RateRow[]): { code: string; length: number } | undefined {
  const [text, called, code] = heard.codeAfter.exec(after) ?? [];
  if (!text || !code || heard.unitNext.test(after.slice(text.length))) return undefined;
  const digits = /^\d{4,5}$/.test(code);
  const meant = called || digits || (/\d/.test(code) && rows.some((row) => isCode(row, code)));
  return meant ? { code, length: text.length } : undefined;
}

function sizeOf([, number, word]: RegExpExecArray): Size {
  return { number: Number(number), unit: heard.sizes[word!.toLowerCase()]! };
}

/** Sizes are those of the schedule itself: nothing is read between its rows. */
function isOfSize({ size, horsepower }: RateRow, said: Size): boolean {
  if (said.unit === 'hp') return horsepower === said.number;
  if (!size) return false;
  try {
    return Math.abs(convert(said.number, said.unit, size.unit) / size.number - 1) < 0.005;
  } catch {
    return false;
  }
}
