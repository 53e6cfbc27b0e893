import { type Change, isStamp, stampAfter } from '../ask/book/change.ts';
import { isRole, type Role } from '../ask/book/roles.ts';
import * as kept from './kept.ts';

/** A job as this phone has it from the server; what was written here and not sent yet lies beside it, change by change. */
export interface KeptJob {
  readonly key: string;
  readonly role: Role;
  /** All that the server has handed over, in its order. */
  readonly server: readonly Change[];
  /** Begun here: the server is to start it when it is first told of it. */
  readonly begun?: true;
  /** The link was taken back. What was written down is still here. */
  readonly revoked?: true;
  /** When it was opened last, in milliseconds. */
  readonly at: number;
}

const jobs = 'job';
const unsent = 'job-change';

/** The job kept under a key; undefined where there is none, or it is damaged. */
export async function keptJob(key: string): Promise<KeptJob | undefined> {
  const found = await kept.take(jobs, key);
  return isJob(found) ? found : undefined;
}

/** Every job kept here, the one opened last first. */
export async function keptJobs(): Promise<KeptJob[]> {
  const found = (await kept.all(jobs)).map(({ value }) => value).filter(isJob);
  return found.sort((a, b) => b.at - a.at);
}

export const keepJob = (job: KeptJob): Promise<boolean> => kept.keep(jobs, job.key, job);

/** What was written here and is not on the server yet, in the order it was made. */
export async function unsentOf(key: string): Promise<Change[]> {
  const found = (await kept.all(unsent)).filter(({ id }) => id.startsWith(`${key}/`)).map(({ value }) => value);
  return (found as Change[]).sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Keeps changes until the server has them; false when they will be gone with the page. */
export const keepUnsent = (key: string, changes: readonly Change[]): Promise<boolean> =>
  kept.keepAll(changes.map((change) => ({ kind: unsent, id: `${key}/${change.id}`, value: change })));

export const dropSent = (key: string, ids: readonly string[]): Promise<void> =>
  kept.dropAll(
    unsent,
    ids.map((id) => `${key}/${id}`),
  );

/** A key for a job that is begun here: 128 bits, as the server makes them. */
export function newJobKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');
}

// A name of this window, not of the phone: two windows of one phone must not make the same stamp.
const device = [...crypto.getRandomValues(new Uint8Array(10))].map((byte) => (byte % 36).toString(36)).join('');
let last: string | undefined;

/** A stamp for a change made now: after all that the book holds, and after the last one made here. */
export function stampHere({ last: seen }: { readonly last: string | undefined }): string {
  last = stampAfter(last === undefined || (seen !== undefined && seen > last) ? seen : last, Date.now(), device);
  return last;
}

/** What else is shown on the page of a job that was begun a moment ago, by the window that opens it. */
export const wordsForNext = {
  put: (key: string, words: unknown): void => inWindow((store) => store.setItem(nameFor(key), JSON.stringify(words))),
  take: (key: string): unknown =>
    inWindow((store) => {
      const text = store.getItem(nameFor(key));
      store.removeItem(nameFor(key));
      return text === null ? undefined : JSON.parse(text);
    }),
};

const nameFor = (key: string): string => `bladehand said ${key}`;

function inWindow<T>(what: (store: Storage) => T): T | undefined {
  try {
    return what(sessionStorage);
  } catch {
    return undefined; // A private window: the words are not carried on.
  }
}

/** Whether a thing read from a file or from the browser's store is a job of ours. */
export function isJob(value: unknown): value is KeptJob {
  if (typeof value !== 'object' || value === null) return false;
  const { key, role, server, at } = value as Record<string, unknown>;
  return (
    typeof key === 'string' &&
    typeof role === 'string' &&
    isRole(role) &&
    typeof at === 'number' &&
    Array.isArray(server) &&
    server.every((change: unknown) => isStamp((change as Partial<Change> | null)?.id))
  );
}
