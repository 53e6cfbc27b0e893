import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { installed, installStamp, isInstalled, machine } from './fresh.cjs';

/**
 * Makes sure that node_modules is what package-lock.json says, for this Node and this machine. Everything the installer
 * says goes to standard error. Throws an Error that says what to do when it cannot be done.
 */
export async function ensureInstalled(root) {
  if (await isFresh(root)) return;
  const { withLock } = await import('./lock.mjs');
  await withLock(join(root, 'dist/.install-lock'), 'installing', async () => {
    if (await isFresh(root)) return;
    if (!matchesLockfile(root)) await install(root);
    await stamp(root);
  });
}

/** True when the stamp of the last install still holds. The lock file is hashed only when its time or size has changed. */
export async function isFresh(root) {
  const kept = installed(root);
  if (!kept) return false;
  if (isInstalled(root)) return true;
  if (kept.hash !== (await hashOf(root))) return false;
  await stamp(root);
  return true;
}

/**
 * True when npm has already installed exactly these packages for this machine, as after a person's own `npm ci`: npm
 * leaves a record of what it put there once it is done.
 */
export function matchesLockfile(root) {
  let installed;
  try {
    installed = JSON.parse(readFileSync(join(root, 'node_modules/.package-lock.json'), 'utf8')).packages;
  } catch {
    return false;
  }
  const wanted = JSON.parse(readFileSync(lockfilePath(root), 'utf8')).packages;
  const same = (path) => installed[path]?.version === wanted[path].version;
  return (
    Object.keys(installed).every((path) => wanted[path] && same(path)) &&
    Object.keys(wanted).every(
      (path) => path === '' || same(path) || (wanted[path].optional && !isForHere(wanted[path])),
    )
  );
}

/** A package of prebuilt code for this machine. Which C library is meant, npm knows better. */
function isForHere({ os, cpu, libc }) {
  return !libc && Boolean(os?.includes(process.platform) && cpu?.includes(process.arch));
}

async function install(root) {
  process.stderr.write('Installing what the project needs (once) …\n');
  const { run } = await import('./child.mjs');
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const [program, first] = npm();
  const code = await run(program, [...first, ...args], { cwd: root, stdout: 2 });
  if (code === 0 && existsSync(join(root, 'node_modules'))) return;
  throw new Error(
    `npm ci ended with code ${code}; its own lines above say why. Check that the package registry can be reached, ` +
      'then run the same command again.',
  );
}

/** The npm that started this, else the one on the path. */
function npm() {
  const started = process.env.npm_execpath;
  return started && basename(started).startsWith('npm-cli') ? [process.execPath, [started]] : ['npm', []];
}

async function stamp(root) {
  const { size, mtimeMs } = statSync(lockfilePath(root));
  const hash = await hashOf(root);
  writeFileSync(installStamp(root), JSON.stringify({ hash, machine, size, mtimeMs }));
}

async function hashOf(root) {
  const { createHash } = await import('node:crypto');
  return createHash('sha256')
    .update(readFileSync(lockfilePath(root)))
    .update(machine)
    .digest('hex');
}

const lockfilePath = (root) => join(root, 'package-lock.json');
