import { describe, expect, test } from 'vitest';
import { filesUnder, resolveImport, type SourceFile } from './sources.ts';
import { importsOf } from './syntax.ts';

/** Which folders of src a folder may import beside itself. Tests are free; nothing in src imports them. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  calc: [],
  rules: ['calc'],
  ask: ['rules', 'calc'],
  server: ['ask', 'rules', 'calc'],
  client: ['ask', 'rules', 'calc'],
};

const sources = filesUnder('src', ['.ts', '.tsx']);

function folderOf(path: string): string {
  return /^src\/([^/]+)\//.exec(path)?.[1] ?? path;
}

/** Imports of a file that the law of folders does not allow. */
function breachesIn(file: SourceFile): string[] {
  const from = folderOf(file.path);
  const may = [from, ...(allowed[from] ?? [])];
  return importsOf(file)
    .filter((specifier) => specifier.startsWith('.') || specifier.startsWith('/') || specifier === '?')
    .filter((specifier) => specifier === '?' || !may.includes(folderOf(resolveImport(file.path, specifier))))
    .map((specifier) => `${file.path} imports ${specifier}`);
}

/** A way round through the imports, or nothing. */
function circleIn(imports: ReadonlyMap<string, readonly string[]>): string[] | undefined {
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (path: string): string[] | undefined => {
    if (trail.includes(path)) return [...trail.slice(trail.indexOf(path)), path];
    if (done.has(path)) return undefined;
    trail.push(path);
    for (const next of imports.get(path) ?? []) {
      const circle = visit(next);
      if (circle) return circle;
    }
    trail.pop();
    done.add(path);
    return undefined;
  };
  for (const path of imports.keys()) {
    const circle = visit(path);
    if (circle) return circle;
  }
  return undefined;
}

describe('imports point downward only', () => {
  test('there are sources to look at', () => {
    expect(sources.map(({ path }) => folderOf(path))).toEqual(expect.arrayContaining(['calc', 'rules', 'ask']));
  });

  test('every folder of src has its line in the law', () => {
    const folders = new Set(sources.map(({ path }) => folderOf(path)));
    expect([...folders].filter((folder) => !(folder in allowed))).toEqual([]);
  });

  test('calc imports nothing of ours, rules calc, ask rules and calc; server and client know nothing of each other', () => {
    expect(sources.flatMap(breachesIn)).toEqual([]);
  });

  test.each([
    ['src/calc/a.ts', `import { x } from '../rules/x.ts';`],
    ['src/calc/a.ts', `import type { X } from '../rules/x.ts';`],
    ['src/calc/sub/a.ts', `export * from '../../rules/x.ts';`],
    ['src/rules/a.ts', `export type Y = import('../ask/x.ts').X;`],
    ['src/ask/a.ts', `const x = await import('../server/' + name);`],
    ['src/ask/a.ts', `const x = await import('../server/x.ts');`],
    ['src/client/a.ts', `import '../server/x.ts';`],
    ['src/server/a.ts', `export { page } from '../client/page.ts';`],
    ['src/server/a.ts', `import { x } from '../../tests/x.ts';`],
  ])('a breach in %s is seen: %s', (path, text) => {
    expect(breachesIn({ path, text })).toHaveLength(1);
  });

  test('words about an import in a comment or a string are no import', () => {
    const text = `// import '../server/x.ts'\nexport const said = "import '../server/x.ts'";`;
    expect(breachesIn({ path: 'src/calc/a.ts', text })).toEqual([]);
  });
});

describe('no file imports itself by a way round', () => {
  test('src has no circle', () => {
    const imports = new Map(
      sources.map((file) => [
        file.path,
        importsOf(file)
          .filter((specifier) => specifier.startsWith('.'))
          .map((specifier) => resolveImport(file.path, specifier)),
      ]),
    );
    expect(circleIn(imports)).toBeUndefined();
  });

  test('a circle is found, and a shared import is none', () => {
    const circle = new Map([
      ['a', ['b']],
      ['b', ['c']],
      ['c', ['b']],
    ]);
    expect(circleIn(circle)).toEqual(['b', 'c', 'b']);
    const shared = new Map([
      ['a', ['b', 'c']],
      ['b', ['c']],
    ]);
    expect(circleIn(shared)).toBeUndefined();
  });
});
