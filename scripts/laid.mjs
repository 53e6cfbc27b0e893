import { existsSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';

const source = 'src/ask/laying.ts';

/** Files of the sources that a build puts data in the place of, by the name under which `src/ask/laying.ts` gives it. */
const places = { cues: 'src/ask/laid.ts', rules: 'src/rules/laid.ts' };

/** Works out, from the sources as they are, what a build lays down: the text that stands in place of each file. */
export async function layDown(root) {
  if (!existsSync(join(root, source))) return {};
  const { default: esbuild } = await import('esbuild');
  const { forNode } = await import('./build-options.mjs');
  const { banner: _banner, define: _define, ...options } = forNode;
  const { outputFiles } = await esbuild.build({
    ...options,
    absWorkingDir: root,
    write: false,
    entryPoints: [source],
    outfile: 'laying.cjs',
  });
  const module = { exports: {} };
  vm.runInThisContext(`(function (module, exports) {${outputFiles[0].text}\n})`)(module, module.exports);
  return Object.fromEntries(
    Object.entries(places).map(([name, path]) => [
      path,
      `export const laid = JSON.parse(${JSON.stringify(JSON.stringify(module.exports[name]))});`,
    ]),
  );
}

/** For the browser the version of the rules alone: working it out reads all of them twice, and is long on a phone. */
export const versionAlone = (laid) => {
  const path = places.rules;
  const { version } = vm.runInThisContext(laid[path].replace(/^export const laid = |;$/g, ''));
  return { [path]: `export const laid = ${JSON.stringify({ version })};` };
};

/** Makes the builder read what was laid down in place of those files. */
export const withLaid = (laid) => ({
  name: 'laid',
  setup: ({ onLoad, initialOptions }) =>
    onLoad({ filter: /[\\/]laid\.ts$/ }, ({ path }) => {
      const own = path.slice(initialOptions.absWorkingDir.length + 1).replaceAll('\\', '/');
      return Object.hasOwn(laid, own) ? { contents: laid[own] } : undefined;
    }),
});
