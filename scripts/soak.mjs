import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt } from './build.mjs';

/** `npm run soak`: the server at saturation and beset by bad clients for two minutes, on this machine alone. */
export async function soak(root, args) {
  if (!(await ensureBuilt(root))) throw new Error('The build failed; the lines above say where.');
  const { default: esbuild } = await import('esbuild');
  const { forNode } = await import('./build-options.mjs');
  const outfile = join(root, 'dist/soak.cjs');
  await esbuild.build({ ...forNode, write: true, entryPoints: [join(root, 'scripts/soak/soak.ts')], outfile });
  return (await import(pathToFileURL(outfile).href)).default.main(args);
}
