import { createHash, type Hash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { StoreFault } from './fault.ts';
import type { Part, Store } from './store.ts';

/** What a backup holds. */
export interface Tally {
  readonly logs: number;
  readonly entries: number;
}

const head = { backup: 'bladehand', v: 1 };

/**
 * Writes all that is kept as lines of JSON: a head, the parts, and a foot with their count and hash, by which a file that
 * broke off is known. The file appears under its name only when it is whole and on disk.
 */
export async function backUp(store: Store, file: string): Promise<Tally> {
  const fresh = `${file}.part`;
  const tally = { logs: 0, entries: 0 };
  const hash = createHash('sha256');
  const out = await open(fresh, 'w', 0o600);
  try {
    let text = `${JSON.stringify(head)}\n`;
    await store.dump(async (part) => {
      count(tally, hash, part);
      text += `${JSON.stringify(part)}\n`;
      if (text.length < chunk) return;
      await out.writeFile(text);
      text = '';
    });
    await out.writeFile(`${text}${JSON.stringify({ whole: true, ...tally, sha256: hash.digest('hex') })}\n`);
    await out.sync();
    await out.close();
    await rename(fresh, file);
    return tally;
  } catch (fault) {
    await out.close().catch(() => {});
    await rm(fresh, { force: true });
    throw fault;
  }
}

/** What is gathered before it is written, in characters. */
const chunk = 64 * 1024;

/** Brings a backup back. The file is read through and checked before anything is touched. */
export async function restore(store: Store, file: string, replace: boolean): Promise<Tally> {
  const tally = await check(file);
  await store.fill(partsOf(file), replace);
  return tally;
}

async function check(file: string): Promise<Tally> {
  const tally = { logs: 0, entries: 0 };
  const hash = createHash('sha256');
  let state: 'head' | 'parts' | 'done' = 'head';
  for await (const line of linesOf(file)) {
    if (state === 'head') {
      if (line.backup !== head.backup) throw new StoreFault('badBackup', { where: file });
      if (line.v !== head.v) throw new StoreFault('newer');
      state = 'parts';
    } else if (state === 'parts' && 'whole' in line) {
      const { logs, entries, sha256 } = line;
      if (logs !== tally.logs || entries !== tally.entries || sha256 !== hash.digest('hex'))
        throw new StoreFault('badBackup', { where: file });
      state = 'done';
    } else if (state === 'parts') count(tally, hash, line as unknown as Part);
    else throw new StoreFault('badBackup', { where: file });
  }
  if (state !== 'done') throw new StoreFault('badBackup', { where: file });
  return tally;
}

function count(tally: { logs: number; entries: number }, hash: Hash, part: Part): void {
  if ('in' in part) tally.entries++;
  else if ('log' in part) tally.logs++;
  hash.update(`${JSON.stringify(part)}\n`);
}

async function* partsOf(file: string): AsyncIterable<Part> {
  for await (const line of linesOf(file)) if (!('backup' in line || 'whole' in line)) yield line as unknown as Part;
}

async function* linesOf(file: string): AsyncIterable<Record<string, unknown>> {
  for await (const text of createInterface({
    input: createReadStream(file, 'utf8'),
    crlfDelay: Number.POSITIVE_INFINITY,
  })) {
    let line: unknown;
    try {
      line = JSON.parse(text);
    } catch {
      throw new StoreFault('badBackup', { where: file });
    }
    if (typeof line !== 'object' || line === null || Array.isArray(line))
      throw new StoreFault('badBackup', { where: file });
    yield line as Record<string, unknown>;
  }
}
