import * as kept from './kept.ts';

/** The job that what is said on this phone goes to, and what was written there last by saying it. */
export interface InHand {
  readonly key: string;
  readonly last: readonly string[];
}

const kind = 'in-hand';
const id = 'job';
const here = 'bladehand on job';

/** The job of this window, else the one this phone had last; undefined where it was left. */
export async function jobInHand(): Promise<InHand | undefined> {
  const found = await kept.take(kind, id);
  const job = isInHand(found) ? found : undefined;
  const own = ofWindow();
  if (own === '') return undefined;
  return own === undefined || own === job?.key ? job : { key: own, last: [] };
}

export async function takeInHand(key: string, last: readonly string[] = []): Promise<void> {
  setOfWindow(key);
  await kept.keep(kind, id, { key, last });
}

/** What is said goes to no job any more. */
export async function leaveJob(): Promise<void> {
  setOfWindow('');
  await kept.drop(kind, id);
}

function isInHand(value: unknown): value is InHand {
  const { key, last } = (value ?? {}) as Record<string, unknown>;
  return typeof key === 'string' && Array.isArray(last) && last.every((each) => typeof each === 'string');
}

function ofWindow(): string | undefined {
  try {
    return sessionStorage.getItem(here) ?? undefined;
  } catch {
    return undefined;
  }
}

function setOfWindow(key: string): void {
  try {
    sessionStorage.setItem(here, key);
  } catch {
    // A private window: what the phone keeps counts alone.
  }
}
