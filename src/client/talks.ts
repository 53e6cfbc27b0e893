import type { Entry } from '../ask/views/entry.ts';
import { type Talk, talkOf } from '../ask/views/talk.ts';
import * as kept from './kept.ts';

/** A conversation as it is kept on this phone. */
export interface KeptTalk extends Talk {
  readonly id: string;
  /** Goes up by one each time it is kept: two windows on one job notice each other by it. */
  readonly rev: number;
  /** Ticked boxes, by entry, step and line. */
  readonly ticks: readonly string[];
  /** When it was kept, in milliseconds; the newest is the one shown. */
  readonly at: number;
}

const here = 'bladehand talk';

/** The talk of this window, else the newest one kept. */
export async function lastTalk(): Promise<KeptTalk | undefined> {
  const talks = await allTalks();
  const mine = windowTalk();
  return talks.find(({ id }) => id === mine) ?? talks[0];
}

/** Every talk kept on this phone, the newest first. */
export async function allTalks(): Promise<KeptTalk[]> {
  const talks = (await kept.all('talk')).map(({ value }) => value).filter(isTalk);
  return talks.sort((a, b) => b.at - a.at);
}

/** Keeps a talk. Where another window has gone on with it, this one becomes a talk of its own: nothing of either is lost. */
export async function keepTalk(
  talk: KeptTalk,
  entries: readonly Entry[],
  ticks: ReadonlySet<string>,
): Promise<{ talk: KeptTalk; parted: boolean }> {
  const stored = await kept.take('talk', talk.id);
  const parted = isTalk(stored) && stored.rev !== talk.rev;
  const next: KeptTalk = {
    ...talkOf(entries, talk, talk.version),
    id: parted ? newId() : talk.id,
    rev: talk.rev + 1,
    ticks: [...ticks],
    at: Date.now(),
  };
  await kept.keep('talk', next.id, next);
  setWindowTalk(next.id);
  return { talk: next, parted };
}

export function newTalk(version: string, start?: unknown): KeptTalk {
  return {
    id: newId(),
    rev: 0,
    first: 1,
    turns: [],
    ticks: [],
    at: 0,
    version,
    ...(start === undefined ? {} : { start }),
  };
}

const newId = (): string => `${Date.now().toString(36)}-${Math.floor(Math.random() * 36 ** 6).toString(36)}`;

function windowTalk(): string | undefined {
  try {
    return sessionStorage.getItem(here) ?? undefined;
  } catch {
    return undefined;
  }
}

export function setWindowTalk(id: string): void {
  try {
    sessionStorage.setItem(here, id);
  } catch {
    // A private window: the newest talk is taken instead.
  }
}

/** Whether a thing read from a file or from the browser's store is a talk, whole and of our shape. */
export function isTalk(value: unknown): value is KeptTalk {
  if (typeof value !== 'object' || value === null) return false;
  const { id, rev, first, turns, ticks, at, version } = value as Record<string, unknown>;
  const isTurn = (turn: unknown): boolean =>
    typeof turn === 'object' && turn !== null && typeof (turn as { question?: unknown }).question === 'string';
  return (
    typeof id === 'string' &&
    Number.isInteger(rev) &&
    Number.isInteger(first) &&
    typeof at === 'number' &&
    typeof version === 'string' &&
    Array.isArray(turns) &&
    turns.every(isTurn) &&
    Array.isArray(ticks) &&
    ticks.every((tick) => typeof tick === 'string')
  );
}
