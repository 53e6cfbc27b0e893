import type { QuizItem } from '../../reply.ts';
import { mistakeNames } from '../../wording/quiz-mistakes.en.ts';
import type { QuizSet } from '../build.ts';
import { drawingInWords } from '../drawing-words.ts';
import { keyLetters } from './letters.ts';

const places = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'] as const;

/** Columns of the file, in order: names of the format, not for people. */
export const columns: readonly string[] = [
  ...['id', 'type', 'lang', 'topic', 'level', 'seat', 'must_pass', 'stem', 'drawing'],
  ...places.map((place) => `option_${place}`),
  ...['key', 'tolerance', 'unit', 'explanation'],
  ...places.map((place) => `mistake_${place}`),
  ...['rule', 'source', 'rules_version'],
];

/** Columns whose cells are numbers, and may begin with a minus. */
const numeric = new Set(['tolerance']);

/**
 * A set as CSV by RFC 4180: a head row, CRLF, quotes doubled. With `spreadsheet` a byte-order mark goes before it, so that
 * a spreadsheet reads it as UTF-8. A cell that a spreadsheet would take for a formula gets an apostrophe before it.
 */
export function asCsv(set: QuizSet, { spreadsheet = false } = {}): string {
  const rows = set.items.map((item) => rowOf(item, set.rules.version));
  const lines = [
    columns.map(cell),
    ...rows.map((row) => columns.map((name) => cell(guarded(name, row.get(name) ?? '')))),
  ];
  return (spreadsheet ? '\ufeff' : '') + lines.map((line) => `${line.join(',')}\r\n`).join('');
}

function rowOf(item: QuizItem, version: string): Map<string, string> {
  const { options, kind } = item;
  return new Map([
    ['id', item.id],
    ['type', kind],
    ['lang', 'en'],
    ['topic', item.topic],
    ['level', item.level],
    ['seat', item.seat ?? ''],
    ['must_pass', item.mustPass ? 'yes' : ''],
    ['stem', item.stem],
    ['drawing', drawingInWords(item.drawing) ?? ''],
    ...options.map(({ text }, at) => [`option_${places[at]}`, text] as const),
    ['key', kind === 'number' ? String(item.key) : keyLetters(item).join(kind === 'order' ? '>' : ' ')],
    ['tolerance', item.tolerance === undefined ? '' : String(item.tolerance)],
    ['unit', item.unit ?? ''],
    ['explanation', item.why],
    ...options.map(
      ({ mistake }, at) => [`mistake_${places[at]}`, mistake ? (mistakeNames[mistake] ?? mistake) : ''] as const,
    ),
    ['rule', item.rule],
    ['source', item.source],
    ['rules_version', version],
  ]);
}

/** Signs by which a spreadsheet takes a cell for a formula. */
const formula = /^[=+\-@\t\r]/;

/** A cell with an apostrophe before what a spreadsheet would take for a formula. */
export function guarded(column: string, text: string): string {
  const isNumber =
    (column === 'key' || numeric.has(column)) && /^-?[0-9.e+-]{1,40}$/.test(text) && Number.isFinite(Number(text));
  return formula.test(text) && !isNumber ? `'${text}` : text;
}

/** A cell by RFC 4180. */
export const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
