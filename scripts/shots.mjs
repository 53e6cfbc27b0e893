import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt } from './build.mjs';

/** `npm run shots`: pictures of the page in all its states, by day and night at 390 and 1280 px, into the folder `shots`. */
export async function shots(root, names) {
  if (!(await ensureBuilt(root))) throw new Error('The build failed; the lines above say where.');
  const { default: esbuild } = await import('esbuild');
  const { forNode } = await import('./build-options.mjs');
  const outfile = join(root, 'dist/shots/shots.cjs');
  mkdirSync(join(root, 'dist/shots'), { recursive: true });
  await esbuild.build({
    ...forNode,
    external: [...forNode.external, 'playwright-core'],
    entryPoints: [join(root, 'scripts/shots/shots.ts')],
    outfile,
    write: true,
  });
  const module = await import(pathToFileURL(outfile).href);
  const taken = await module.shots(join(root, 'shots'), names);
  process.stdout.write(`${taken} pictures are in the folder shots.\n`);
  return 0;
}
