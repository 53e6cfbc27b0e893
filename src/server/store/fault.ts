import { store as words } from '../wording/store.en.ts';

/** What can be wrong with a store. */
export type StoreFaultKind = keyof typeof words.faults;

/** A store that cannot do what was asked of it. The message is worded for the person who runs the server. */
export class StoreFault extends Error {
  readonly kind: StoreFaultKind;

  constructor(kind: StoreFaultKind, options?: { readonly where?: string; readonly cause?: unknown }) {
    super(words.faults[kind](options?.where ?? ''), { cause: options?.cause });
    this.name = 'StoreFault';
    this.kind = kind;
  }
}

/** Codes of SQLite, of PostgreSQL (SQLSTATE) and of the system, by what they come to. */
const byCode: Readonly<Record<string, StoreFaultKind>> = {
  SQLITE_BUSY: 'held',
  SQLITE_LOCKED: 'held',
  SQLITE_FULL: 'full',
  SQLITE_NOTADB: 'damaged',
  SQLITE_CORRUPT: 'damaged',
  SQLITE_CANTOPEN: 'unopened',
  SQLITE_READONLY: 'unwritable',
  SQLITE_IOERR: 'io',
  ENOSPC: 'full',
  EACCES: 'unwritable',
  EROFS: 'unwritable',
  ENOTDIR: 'unopened',
  '53100': 'full',
  '25006': 'unwritable',
  '28000': 'refused',
  '28P01': 'refused',
  '3D000': 'refused',
  '57P01': 'unreachable',
  '57P03': 'unreachable',
  '08006': 'unreachable',
  ECONNREFUSED: 'unreachable',
  ECONNRESET: 'unreachable',
  ENOTFOUND: 'unreachable',
  ENOENT: 'unreachable',
  EPIPE: 'unreachable',
  ETIMEDOUT: 'unreachable',
};

/** Errors that come without a code. */
const byMessage: readonly (readonly [RegExp, StoreFaultKind])[] = [
  [/unable to open/i, 'unopened'],
  [/terminated|ended|timeout/i, 'unreachable'],
];

/** Any error of an engine as a fault in plain words; one of ours stays as it is. */
export function faultFrom(error: unknown, where?: string): StoreFault {
  if (error instanceof StoreFault) return error;
  const { code = '', message = '' } = (error ?? {}) as { code?: string; message?: string };
  const family = Object.keys(byCode).find((known) => code === known || code.startsWith(`${known}_`));
  const kind = family ? byCode[family]! : (byMessage.find(([pattern]) => pattern.test(message))?.[1] ?? 'failed');
  return new StoreFault(kind, { ...(where === undefined ? {} : { where }), cause: error });
}
