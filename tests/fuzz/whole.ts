import type fc from 'fast-check';
import { fold } from '../../src/ask/book/book.ts';
import type { Change } from '../../src/ask/book/change.ts';
import { bookToCsv } from '../../src/ask/book/whole-csv.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { bent } from './bent.ts';
import { changes } from './files.ts';

const whole = bookToCsv(fold(changes as readonly Change[]), knowledge)
  .split('\r\n')
  .map((line) => line.split(','));

/** A job as our own CSV, with cells of it replaced. */
export const wholeCsv: fc.Arbitrary<string> = bent(whole).map((rows) =>
  Array.isArray(rows)
    ? rows.map((row) => (Array.isArray(row) ? row.join(',') : String(row))).join('\r\n')
    : String(rows),
);
