import { existsSync, readFileSync, rmSync, statSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { signatureOf } from '../../scripts/build.mjs';
import { launch, lendPackages, put, smallProject } from './project.ts';

const saying = (words: string) => ({
  'src/server/ask-command.ts': `export const main = async () => { console.log('${words}'); return 0; };`,
});

describe('a change in the sources is seen', () => {
  const files = { 'src/a.ts': 'a', 'src/sub/b.ts': 'b', 'content/c.md': 'c' };

  test.each<[string, (root: string) => void]>([
    [
      'another text of the same length',
      (root) => {
        put(root, { 'src/a.ts': 'x' });
        utimesSync(join(root, 'src/a.ts'), new Date(), new Date(Date.now() + 5));
      },
    ],
    ['a new file', (root) => put(root, { 'content/d.md': '' })],
    ['a file gone', (root) => rmSync(join(root, 'src/sub/b.ts'))],
    ['an older file in its place', (root) => utimesSync(join(root, 'src/a.ts'), new Date(1), new Date(1))],
    ['another package.json', (root) => put(root, { 'package.json': '{"type":"module" }' })],
  ])('%s', (_, change) => {
    const root = smallProject(files);
    const before = signatureOf(root);
    expect(signatureOf(root)).toBe(before);
    change(root);
    expect(signatureOf(root)).not.toBe(before);
  });
});

test('it builds when a source has changed, and only then', async () => {
  const root = smallProject(saying('one'));
  lendPackages(root);
  const bundle = join(root, 'dist/ask.mjs');
  expect((await launch(root, ['ask'])).stdout).toBe('one\n');
  const built = statSync(bundle).mtimeMs;
  expect((await launch(root, ['ask'])).stdout).toBe('one\n');
  expect(statSync(bundle).mtimeMs).toBe(built);

  put(root, saying('two!'));
  expect((await launch(root, ['ask'])).stdout).toBe('two!\n');
});

test('a source that cannot be built is named, and the bundle of before does not answer in its place', async () => {
  const root = smallProject(saying('one'));
  lendPackages(root);
  await launch(root, ['ask']);
  put(root, { 'src/server/ask-command.ts': 'export const main = ;' });
  for (const _ of ['the first time', 'and again']) {
    const failed = await launch(root, ['ask']);
    expect(failed).toMatchObject({ code: 1, stdout: '' });
    expect(failed.stderr).toMatch(/src\/server\/ask-command\.ts:1:20/);
    expect(failed.stderr).toContain('The build failed');
  }
  expect(existsSync(join(root, 'dist/ask.mjs'))).toBe(false);
});

test('the page is built for a browser, JSX for the page library, and a package in CommonJS may ask for node: modules', async () => {
  const root = smallProject({
    'src/client/page.ts': `import { hello } from './hello.ts'; document.title = hello;`,
    'src/client/hello.ts': `export const hello: string = 'a page';`,
    'src/server/ask-command.ts': `
      import old from 'old-package';
      import { view } from './view.tsx';
      export const main = async () => { console.log(old, JSON.stringify(view)); return 0; };`,
    'src/server/view.tsx': 'export const view = <p>1</p>;',
  });
  lendPackages(root);
  put(root, {
    'node_modules/old-package/package.json': '{}',
    'node_modules/old-package/index.js': `module.exports = require('path').basename('a/b');`,
    'node_modules/hono/package.json': JSON.stringify({ name: 'hono', exports: { './jsx/jsx-runtime': './jsx.js' } }),
    'node_modules/hono/jsx.js': 'exports.jsx = (tag, props) => [tag, props.children];',
  });
  expect(await launch(root, ['ask'])).toEqual({ code: 0, stdout: 'b ["p","1"]\n', stderr: '' });
  const page = readFileSync(join(root, 'dist/client/page.js'), 'utf8');
  expect(page).toContain('a page');
  expect(page.length).toBeLessThan(200);
});
