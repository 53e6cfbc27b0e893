import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** What is built: the entry, if it is there, into one file. */
export const bundles = [
  { entry: 'src/server/start.ts', out: 'dist/server.mjs', runsIn: 'node' },
  { entry: 'src/server/ask-command.ts', out: 'dist/ask.mjs', runsIn: 'node' },
  { entry: 'src/client/page.ts', out: 'dist/client/page.js', runsIn: 'browser' },
];

const watched = ['src', 'content', 'scripts'];
const watchedFiles = ['package.json', 'package-lock.json', 'tsconfig.json'];

/**
 * Rebuilds the bundles when a source has changed since the last build. Gives false when a source cannot be built; the
 * builder has then said why on standard error, and no bundle is left that would answer from older rules.
 */
export async function ensureBuilt(root) {
  if (isBuilt(root, signatureOf(root))) return true;
  const { withLock } = await import('./lock.mjs');
  return withLock(join(root, 'dist/.build-lock'), 'building', async () => {
    // Taken before the build: a file saved meanwhile makes the next run build again.
    const signature = signatureOf(root);
    if (isBuilt(root, signature)) return true;
    rmSync(stampPath(root), { force: true });
    const present = bundles.filter(({ entry }) => existsSync(join(root, entry)));
    const built = await Promise.all(present.map((bundle) => build(root, bundle)));
    if (built.includes(false)) {
      for (const { out } of bundles) rmSync(join(root, out), { force: true });
      return false;
    }
    writeFileSync(stampPath(root), signature);
    return true;
  });
}

/** Count, size and age of all sources in one line: the same line means that nothing was added, removed or changed. */
export function signatureOf(root) {
  const seen = { entries: 0, bytes: 0, newest: 0, times: 0 };
  for (const name of watched) if (existsSync(join(root, name))) lookThrough(join(root, name), seen);
  for (const name of watchedFiles) if (existsSync(join(root, name))) lookAt(join(root, name), seen);
  return JSON.stringify(seen);
}

function lookThrough(folder, seen) {
  lookAt(folder, seen);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) lookThrough(path, seen);
    else lookAt(path, seen);
  }
}

function lookAt(path, seen) {
  const { mtimeMs, size } = statSync(path, { throwIfNoEntry: false }) ?? { mtimeMs: 0, size: 0 };
  seen.entries += 1;
  seen.bytes += size;
  seen.newest = Math.max(seen.newest, mtimeMs);
  // A sum of times as well: an older file put in place of another would not show in the newest one.
  seen.times = (seen.times + mtimeMs) % 1e12;
}

function isBuilt(root, signature) {
  try {
    return readFileSync(stampPath(root), 'utf8') === signature;
  } catch {
    return false;
  }
}

/** Bundles one entry. The file is put in place whole, so that nobody ever reads half of it. */
async function build(root, { entry, out, runsIn }) {
  const { default: esbuild } = await import('esbuild');
  const { forBrowser, forNode, shared } = await import('./build-options.mjs');
  const options = { ...shared, ...(runsIn === 'node' ? forNode : forBrowser), absWorkingDir: root, write: false };
  try {
    const result = await esbuild.build({ ...options, entryPoints: [entry], outfile: out });
    for (const file of result.outputFiles) {
      mkdirSync(dirname(file.path), { recursive: true });
      writeFileSync(`${file.path}.new`, file.contents);
      renameSync(`${file.path}.new`, file.path);
    }
    return true;
  } catch (fault) {
    if (!fault.errors) throw fault;
    return false; // esbuild has printed each error with its place.
  }
}

const stampPath = (root) => join(root, 'dist/.build-stamp');
