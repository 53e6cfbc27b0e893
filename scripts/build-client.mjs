import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import { drawIcons } from './icons.mjs';

const folder = 'dist/client';

/** Modules of the page. What the page loads when it is needed is a file of its own, as is what two of these share. */
const modules = ['page', 'records', 'cards'];
/** Run by themselves, not as modules: before the page is drawn, and in the background. */
const scripts = ['look', 'worker'];

/**
 * Builds what the browser runs and keeps, each file packed ahead under a name that changes with its content, and the list of
 * them (`files.json`) that the server and the background worker go by. `laid` is what is laid down for the server. False when
 * a source cannot be built.
 */
export async function buildClient(root, laid = {}) {
  const sourceOf = (name) => `src/client/${name}.ts`;
  const present = (names) => names.filter((name) => existsSync(join(root, sourceOf(name))));
  if (present(modules).length === 0) return true;
  const { default: esbuild } = await import('esbuild');
  const { forBrowser } = await import('./build-options.mjs');
  const { withoutExamples } = await import('./without-examples.mjs');
  const { versionAlone, withLaid } = await import('./laid.mjs');
  const shared = { ...forBrowser, absWorkingDir: root, write: false, outdir: folder, entryNames: '[name]-[hash]' };
  try {
    const building = Promise.all([
      esbuild.build({
        ...shared,
        entryPoints: present(modules).map(sourceOf),
        splitting: true,
        chunkNames: '[name]-[hash]',
        format: 'esm',
        metafile: true,
        plugins: [withoutExamples, withLaid(Object.keys(laid).length > 0 ? versionAlone(laid) : {})],
      }),
      ...present(scripts).map((name) => esbuild.build({ ...shared, entryPoints: [sourceOf(name)], format: 'iife' })),
    ]);
    const icons = drawIcons(); // Meanwhile: the builder is a process of its own.
    const [split, ...single] = await building;
    const built = [split, ...single].flatMap(({ outputFiles }) => outputFiles);
    const code = built.map(({ path, contents }) => ({ file: basename(path), type: 'text/javascript', contents }));
    const files = [...code, ...icons];
    await write(root, files, needsIn(split.metafile));
    return true;
  } catch (fault) {
    if (!fault.errors) throw fault;
    return false; // esbuild has printed each error with its place.
  }
}

/** The files that each file loads at once, itself left out, so that they can be asked for together. */
function needsIn({ outputs }) {
  const needs = {};
  for (const path of Object.keys(outputs)) {
    const seen = new Set();
    const visit = (at) => {
      for (const { path: next, kind } of outputs[at]?.imports ?? []) {
        if (kind !== 'import-statement' || seen.has(next)) continue;
        seen.add(next);
        visit(next);
      }
    };
    visit(path);
    needs[basename(path)] = [...seen].map((each) => basename(each));
  }
  return needs;
}

/** Written beside the old ones and put in their place together. */
async function write(root, files, needs) {
  const fresh = join(root, `${folder}.${process.pid}`);
  rmSync(fresh, { recursive: true, force: true });
  mkdirSync(fresh, { recursive: true });
  const listed = await Promise.all(
    files.map(async ({ file, type, contents }) => {
      writeFileSync(join(fresh, file), contents);
      const packed = type.startsWith('image/png') ? {} : await pack(contents);
      for (const [coding, bytes] of Object.entries(packed)) writeFileSync(join(fresh, `${file}.${coding}`), bytes);
      const sizes = Object.fromEntries(Object.entries(packed).map(([coding, { length }]) => [coding, length]));
      const hash = createHash('sha256').update(contents).digest('hex');
      const name = file.replace(/-[A-Z0-9]{8}(?=\.)/, '');
      return { name, file, type, hash, bytes: contents.length, ...sizes, needs: needs[file] ?? [] };
    }),
  );
  const built = new Date().toISOString().slice(0, 10);
  writeFileSync(join(fresh, 'files.json'), JSON.stringify({ built, files: listed }));
  rmSync(join(root, folder), { recursive: true, force: true });
  renameSync(fresh, join(root, folder));
}

async function pack(contents) {
  const params = {
    [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
    [constants.BROTLI_PARAM_SIZE_HINT]: contents.length,
  };
  const [br, gz] = await Promise.all([
    promisify(brotliCompress)(contents, { params }),
    promisify(gzip)(contents, { level: 9 }),
  ]);
  return { br, gz };
}
