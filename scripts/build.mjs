import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { buildStamp, isBuilt, signatureOf } from './fresh.cjs';
import { marked } from './load.cjs';

/** What is built for Node: the entry, if it is there, into one file. */
export const bundles = [
  { entry: 'src/server/start.ts', out: 'dist/server.cjs' },
  { entry: 'src/server/ask-command.ts', out: 'dist/ask.cjs' },
  { entry: 'src/server/quiz-command.ts', out: 'dist/quiz.cjs' },
  { entry: 'src/server/store-command.ts', out: 'dist/store.cjs' },
];

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
    rmSync(buildStamp(root), { force: true });
    const present = bundles.filter(({ entry }) => existsSync(join(root, entry)));
    const { buildClient } = await import('./build-client.mjs');
    const laid = present.length > 0 ? await laidDown(root) : {};
    const client = buildClient(root, laid);
    const bundled = laid ? present.map((bundle) => build(root, bundle, laid)) : [];
    const built = await Promise.all([...bundled, laid !== undefined, client]);
    if (built.includes(false)) {
      for (const { out } of bundles) rmSync(join(root, out), { force: true });
      rmSync(join(root, 'dist/client'), { recursive: true, force: true });
      return false;
    }
    writeFileSync(buildStamp(root), signature);
    return true;
  });
}

/** What a start need not work out again; undefined when a source cannot be built. */
async function laidDown(root) {
  try {
    return await (await import('./laid.mjs')).layDown(root);
  } catch (fault) {
    if (!fault.errors) throw fault;
    return undefined; // esbuild has printed each error with its place.
  }
}

/** Bundles one entry. The file is put in place whole, so that nobody ever reads half of it. */
async function build(root, { entry, out }, laid) {
  const [{ default: esbuild }, { createHash }] = await Promise.all([import('esbuild'), import('node:crypto')]);
  const { forNode } = await import('./build-options.mjs');
  const { withLaid } = await import('./laid.mjs');
  const options = { ...forNode, absWorkingDir: root, write: false, plugins: [withLaid(laid)] };
  try {
    const { outputFiles } = await esbuild.build({ ...options, entryPoints: [entry], outfile: out });
    const hash = createHash('sha256').update(outputFiles[0].contents).digest('hex').slice(0, 16);
    const path = join(root, out);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(`${path}.new`, marked(outputFiles[0].text, hash));
    renameSync(`${path}.new`, path);
    return true;
  } catch (fault) {
    if (!fault.errors) throw fault;
    return false; // esbuild has printed each error with its place.
  }
}
