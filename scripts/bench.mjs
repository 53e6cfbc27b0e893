import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt } from './build.mjs';

const suffix = '.bench.ts';

/**
 * `npm run bench`: runs every module `scripts/bench/*.bench.ts`, or those named (`npm run bench -- ask http`), one after
 * the other. Each exports `run()`, which gives `{ name: { value, unit } }`. With `--json` standard output holds one such
 * object with all figures, else a table.
 */
export async function bench(root, args) {
  const known = readdirSync(join(root, 'scripts/bench'))
    .filter((file) => file.endsWith(suffix))
    .map((file) => file.slice(0, -suffix.length));
  const asked = args.filter((arg) => arg !== '--json');
  const unknown = asked.filter((name) => !known.includes(name));
  if (unknown.length > 0) {
    throw new Error(`There is no bench called ${unknown.join(', ')}. There are: ${known.join(', ')}; and --json.`);
  }
  if (!(await ensureBuilt(root))) throw new Error('The build failed; the lines above say where.');
  await bundle(root);

  const figures = {};
  let failed = false;
  for (const name of known.filter((one) => asked.length === 0 || asked.includes(one))) {
    process.stderr.write(`Measuring ${name} …\n`);
    try {
      const { run } = await import(pathToFileURL(join(root, 'dist/bench', `${name}.bench.cjs`)).href);
      Object.assign(figures, await run());
    } catch (fault) {
      failed = true;
      process.stderr.write(`${name} could not be measured: ${fault.stack}\n`);
    }
  }
  process.stdout.write(args.includes('--json') ? `${JSON.stringify(figures)}\n` : tableOf(figures));
  return failed ? 1 : 0;
}

/** Bundled, as the program itself is when it runs. */
async function bundle(root) {
  const { default: esbuild } = await import('esbuild');
  const { forNode } = await import('./build-options.mjs');
  const folder = join(root, 'scripts/bench');
  mkdirSync(join(root, 'dist/bench'), { recursive: true });
  await esbuild.build({
    ...forNode,
    external: [...forNode.external, 'playwright-core'],
    write: true,
    entryPoints: readdirSync(folder)
      .filter((file) => /\.(bench|server)\.ts$/.test(file))
      .map((file) => join(folder, file)),
    outdir: join(root, 'dist/bench'),
    outExtension: { '.js': '.cjs' },
  });
}

function tableOf(figures) {
  const rows = Object.entries(figures).map(([name, { value, unit }]) => [name, worded(value), unit]);
  const widths = [0, 1].map((column) => Math.max(0, ...rows.map((row) => row[column].length)));
  return rows
    .map(([name, value, unit]) => `${name.padEnd(widths[0])}  ${value.padStart(widths[1])} ${unit}\n`)
    .join('');
}

function worded(value) {
  if (value >= 1000) return value.toFixed(0);
  return value >= 100 ? value.toFixed(1) : value.toFixed(3);
}
