import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const abandonedAfter = 15 * 60_000;
const pollEvery = 100;

/**
 * Runs `work` while this process alone holds the lock, a folder at `path`. Waits for another holder and says so once on
 * standard error; a holder that has died, or has held it for a quarter of an hour, is put aside.
 */
export async function withLock(path, what, work) {
  mkdirSync(dirname(path), { recursive: true });
  let told = false;
  while (!take(path)) {
    if (!told) process.stderr.write(`Waiting for another process to finish ${what} …\n`);
    told = true;
    await new Promise((wake) => setTimeout(wake, pollEvery));
  }
  const release = () => rmSync(path, { recursive: true, force: true });
  process.once('exit', release);
  try {
    return await work();
  } finally {
    process.off('exit', release);
    release();
  }
}

/** The folder appears with its owner already inside, so there is never a lock that names nobody. */
function take(path) {
  const mine = `${path}.${process.pid}`;
  rmSync(mine, { recursive: true, force: true });
  mkdirSync(mine);
  writeFileSync(join(mine, 'pid'), String(process.pid));
  try {
    renameSync(mine, path);
    return true;
  } catch {
    rmSync(mine, { recursive: true, force: true });
    if (isAbandoned(path)) setAside(path);
    return false;
  }
}

function isAbandoned(path) {
  try {
    if (Date.now() - statSync(path).mtimeMs > abandonedAfter) return true;
    return !isAlive(Number(readFileSync(join(path, 'pid'), 'utf8')));
  } catch {
    return false; // Gone meanwhile: the next try settles it.
  }
}

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (fault) {
    return fault.code === 'EPERM';
  }
}

function setAside(path) {
  const aside = `${path}.old.${process.pid}`;
  try {
    renameSync(path, aside);
    rmSync(aside, { recursive: true, force: true });
  } catch {
    // Another process was quicker.
  }
}
