import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { constants, Script } from 'node:vm';

/**
 * Runs a bundle for Node and gives what it exports. What the engine made of it is kept beside it and taken up by the next
 * start, which saves about a fifth of the time to the first answer. The name of that file holds the bundle's own mark (its
 * first line): the engine itself would take code of another bundle of the same length for this one.
 */
export function load(path) {
  const text = readFileSync(path, 'latin1');
  const kept = `${path}.${markOf(text)}.cache`;
  const cachedData = readIfThere(kept);
  const script = new Script(`(function (exports, require, module, __filename, __dirname) {${text}\n})`, {
    filename: path,
    cachedData,
    importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(path), module, path, dirname(path));
  if (!cachedData || script.cachedDataRejected) keep(kept, path, script);
  return module.exports;
}

/** The text of a bundle, marked with what tells it from every other one. */
export function marked(text, hash) {
  return `/* ${hash} */${text}`;
}

function markOf(text) {
  return /^\/\* ([0-9a-f]{1,64}) \*\//.exec(text)?.[1] ?? 'unmarked';
}

function readIfThere(path) {
  try {
    return readFileSync(path);
  } catch {
    return undefined;
  }
}

/** After the run, so that what ran is in it. Where nothing can be written, the next start compiles again. */
function keep(kept, path, script) {
  try {
    for (const name of readdirSync(dirname(path))) {
      if (name.startsWith(`${basename(path)}.`) && name.endsWith('.cache')) rmSync(join(dirname(path), name));
    }
    const fresh = `${kept}.${process.pid}`;
    writeFileSync(fresh, script.createCachedData());
    renameSync(fresh, kept);
  } catch {
    // Only time is lost.
  }
}
