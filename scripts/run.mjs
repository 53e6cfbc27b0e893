import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBuilt } from './build.mjs';
import { ensureInstalled } from './install.mjs';
import { runMain, sayFault } from './load.cjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const oldestNode = [20, 19];

/** Each takes the words after its name and gives the exit code. `start` and `ask` are loaded as late and as little as can be. */
const commands = {
  // Its answer means that it has shut down: what may still be open must not keep the process.
  start: async (args) => process.exit(await runBundle('server', args)),
  ask: (args) => runBundle('ask', args),
  test: async (args) => (await import('./test.mjs')).test(root, args),
  quiz: (args) => runBundle('quiz', args),
  backup: (args) => runBundle('store', ['backup', ...args]),
  keeper: (args) => runBundle('store', ['keeper', ...args]),
  restore: (args) => runBundle('store', ['restore', ...args]),
  check: async () => (await import('./check.mjs')).check(root),
  bench: async (args) => (await import('./bench.mjs')).bench(root, args),
  shots: async (args) => (await import('./shots.mjs')).shots(root, args),
  generate: async () => (await import('./generate.mjs')).generate(root),
  gaps: async (args) => (await import('./gaps.mjs')).gaps(root, args),
  new: async (args) => (await import('./new.mjs')).newRecord(root, args),
};

async function runBundle(name, args) {
  if (!(await ensureBuilt(root))) throw new Error('The build failed; the lines above say where.');
  return runMain(join(root, 'dist', `${name}.cjs`), args);
}

async function launch([name, ...args]) {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < oldestNode[0] || (major === oldestNode[0] && minor < oldestNode[1])) {
    throw new Error(`Node ${oldestNode.join('.')} or newer is needed; this is ${process.versions.node}.`);
  }
  if (!Object.hasOwn(commands, name ?? '')) {
    throw new Error(`Say what to run: ${Object.keys(commands).join(', ')}.`);
  }
  process.chdir(root);
  await ensureInstalled(root);
  return commands[name](args);
}

try {
  process.exitCode = await launch(process.argv.slice(2));
} catch (fault) {
  sayFault(fault);
}
