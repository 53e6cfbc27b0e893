const { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } = require('node:fs');
const { createRequire } = require('node:module');
const { basename, dirname, join } = require('node:path');
const { constants, Script } = require('node:vm');

/**
 * Runs a bundle for Node, calls its `main` and gives what that gives. What the engine made of the bundle is kept beside it
 * and taken up by the next start, which saves about a fifth of the time to the first answer; it is kept once when the
 * bundle is loaded and again when `main` is done, so that what ran only then is in it too. The name of that file holds the bundle's own mark (its
 * first line): the engine itself would take code of another bundle of the same length for this one.
 */
async function runMain(path, args) {
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
  const fresh = !cachedData || script.cachedDataRejected;
  if (fresh) keep(kept, path, script);
  const code = await module.exports.main(args);
  if (fresh) keep(kept, path, script);
  return code;
}

/** The text of a bundle, marked with what tells it from every other one. */
function marked(text, hash) {
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

/** Says why a command could not be done. A plain Error is worded for the person at the keyboard; anything else is a fault in the program. */
function sayFault(fault) {
  process.stderr.write(`${fault.constructor === Error ? fault.message : fault.stack}\n`);
  process.exitCode = 1;
}

module.exports = { runMain, marked, sayFault };
