/**
 * What is kept on this phone and nowhere else, by kind and id. Where the browser keeps nothing (a private window, no room
 * left) it is held as long as the page stands, and `trouble` says so; no call here ever fails.
 */
export interface Kept<T = unknown> {
  readonly kind: string;
  readonly id: string;
  readonly value: T;
}

const name = 'bladehand';
const shelf = 'kept';
const memory = new Map<string, Kept>();
let opening: Promise<IDBDatabase | undefined> | undefined;
let troubled = false;
const listeners = new Set<() => void>();

/** True once something could not be kept. */
export const trouble = (): boolean => troubled;
export const onTrouble = (listener: () => void): void => {
  listeners.add(listener);
  if (troubled) listener();
};

const keyOf = (kind: string, id: string): string => `${kind}/${id}`;

/** Keeps a thing; false when it will be gone with the page. */
export async function keep(kind: string, id: string, value: unknown): Promise<boolean> {
  const record: Kept = { kind, id, value };
  memory.set(keyOf(kind, id), record);
  return (await run('readwrite', (store) => store.put(record, keyOf(kind, id)))) !== undefined;
}

/** Keeps several things together: all of them or none. False when they will be gone with the page. */
export async function keepAll(records: readonly Kept[]): Promise<boolean> {
  if (records.length === 0) return true;
  for (const record of records) memory.set(keyOf(record.kind, record.id), record);
  const put = (store: IDBObjectStore): IDBRequest[] =>
    records.map((record) => store.put(record, keyOf(record.kind, record.id)));
  return (await run('readwrite', (store) => put(store).at(-1)!)) !== undefined;
}

export async function dropAll(kind: string, ids: readonly string[]): Promise<void> {
  if (ids.length === 0) return;
  for (const id of ids) memory.delete(keyOf(kind, id));
  await run('readwrite', (store) => ids.map((id) => store.delete(keyOf(kind, id))).at(-1)!);
}

export async function take(kind: string, id: string): Promise<unknown> {
  const found = (await run<Kept | undefined>('readonly', (store) => store.get(keyOf(kind, id)))) as Kept | undefined;
  // What could not be put on the disk is newer than what is there.
  const held = memory.get(keyOf(kind, id));
  return (troubled ? (held ?? found) : (found ?? held))?.value;
}

/** Everything kept, or all of one kind. */
export async function all(kind?: string): Promise<Kept[]> {
  const stored = ((await run('readonly', (store) => store.getAll())) ?? []) as Kept[];
  const records = new Map(stored.map((record) => [keyOf(record.kind, record.id), record]));
  if (troubled) for (const [key, record] of memory) records.set(key, record);
  return [...records.values()].filter((record) => kind === undefined || record.kind === kind);
}

export async function drop(kind: string, id: string): Promise<void> {
  memory.delete(keyOf(kind, id));
  await run('readwrite', (store) => store.delete(keyOf(kind, id)));
}

export async function clear(): Promise<void> {
  memory.clear();
  await run('readwrite', (store) => store.clear());
}

/** Runs one request and waits until it is on the disk; undefined when it cannot be had. */
async function run<T>(
  mode: IDBTransactionMode,
  what: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T | IDBValidKey | undefined> {
  opening ??= open();
  const base = await opening;
  if (!base) return fail();
  try {
    return await new Promise((resolve, reject) => {
      const transaction = base.transaction(shelf, mode, { durability: 'strict' });
      const request = what(transaction.objectStore(shelf));
      transaction.oncomplete = () => resolve(request.result ?? (mode === 'readwrite' ? '' : undefined));
      transaction.onabort = () => reject(transaction.error);
      transaction.onerror = () => reject(transaction.error);
    });
  } catch {
    return fail();
  }
}

function fail(): undefined {
  if (!troubled) {
    troubled = true;
    for (const listener of listeners) listener();
  }
  return undefined;
}

function open(): Promise<IDBDatabase | undefined> {
  return new Promise((resolve) => {
    try {
      const request = indexedDB.open(name, 1);
      request.onupgradeneeded = () => request.result.createObjectStore(shelf);
      request.onsuccess = () => {
        // Another window with a newer page must not wait for this one.
        request.result.onversionchange = () => {
          request.result.close();
          opening = undefined;
        };
        resolve(request.result);
      };
      request.onerror = () => resolve(undefined);
      request.onblocked = () => resolve(undefined);
    } catch {
      resolve(undefined);
    }
  });
}
