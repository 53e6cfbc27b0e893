import { readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesUnder, root, type SourceFile } from './sources.ts';
import { importsOf } from './syntax.ts';

const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
};
const runtime = Object.keys(manifest.dependencies);
const development = Object.keys(manifest.devDependencies);

const shipped = filesUnder('src', ['.ts', '.tsx']);
const tools = ['tests', 'scripts'].flatMap((folder) => filesUnder(folder, ['.ts', '.tsx', '.mjs']));
const config: SourceFile = {
  path: 'vitest.config.ts',
  text: readFileSync(join(root, 'vitest.config.ts'), 'utf8'),
};

/** Used without being imported: by the compiler, for its settings or a package it describes, or as a program that the scripts run by its path. */
function usedByPath(name: string): boolean {
  if (name.startsWith('@types/')) {
    const described = name.slice(7);
    return (
      readFileSync(join(root, 'tsconfig.json'), 'utf8').includes(`"${described}"`) ||
      packagesIn([...shipped, ...tools]).has(described)
    );
  }
  return tools.some(({ text }) => text.includes(`node_modules/${name}/`) || text.includes(`import('${name}')`));
}

/** `hono/jsx` is of the package hono, `@a/b/c` of @a/b. */
function packageOf(specifier: string): string {
  const parts = specifier.split('/');
  return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : parts[0]!;
}

function packagesIn(files: readonly SourceFile[]): Set<string> {
  const specifiers = files.flatMap(importsOf).filter((specifier) => !/^[.?/]|^node:/.test(specifier));
  return new Set(specifiers.map(packageOf));
}

describe('package.json says what is used, and nothing else', () => {
  test('every dependency is used by src', () => {
    const used = packagesIn(shipped);
    expect(runtime.filter((name) => !used.has(name))).toEqual([]);
  });

  test('every development dependency is used by tests or scripts', () => {
    const used = packagesIn([...tools, config]);
    expect(development.filter((name) => !used.has(name) && !usedByPath(name))).toEqual([]);
  });

  test('src imports only what is installed for it', () => {
    expect([...packagesIn(shipped)].filter((name) => !runtime.includes(name))).toEqual([]);
  });

  test('tests and scripts import only what is installed', () => {
    const known = [...runtime, ...development];
    expect([...packagesIn([...tools, config])].filter((name) => !known.includes(name))).toEqual([]);
  });

  test("Node's own modules are imported by their full name", () => {
    const bare = [...shipped, ...tools].filter((file) => importsOf(file).some((name) => builtinModules.includes(name)));
    expect(bare.map(({ path }) => path)).toEqual([]);
  });

  test('versions are exact', () => {
    const all = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(all.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  test('a package is told from a path in it', () => {
    const file = { path: 'a.ts', text: `import '@a/b/c'; import 'hono/jsx'; import './x.ts'; import 'node:fs';` };
    expect([...packagesIn([file])]).toEqual(['@a/b', 'hono']);
  });
});
