import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { signatureOf } from '../../scripts/fresh.cjs';
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

const keptCode = (root: string) => readdirSync(join(root, 'dist')).filter((name) => name.endsWith('.cache'));

test('compiled code is kept for the next start, and only that of the bundle at hand', async () => {
  const root = smallProject(saying('one'));
  lendPackages(root);
  await launch(root, ['ask']);
  const [first, ...others] = keptCode(root);
  expect(first).toMatch(/^ask\.cjs\.[0-9a-f]{16}\.cache$/);
  expect(others).toEqual([]);
  const written = statSync(join(root, 'dist', first!)).mtimeMs;
  expect((await launch(root, ['ask'])).stdout).toBe('one\n');
  expect(statSync(join(root, 'dist', first!)).mtimeMs, 'taken up, not made again').toBe(written);

  // As long as before: nothing but the mark of the bundle tells the two apart.
  put(root, saying('two'));
  expect((await launch(root, ['ask'])).stdout).toBe('two\n');
  expect(keptCode(root)).toHaveLength(1);
  expect(keptCode(root)).not.toEqual([first]);
});

test('compiled code that the engine cannot use is made again', async () => {
  const root = smallProject(saying('one'));
  lendPackages(root);
  await launch(root, ['ask']);
  const [kept] = keptCode(root);
  put(root, { [`dist/${kept}`]: 'not code' });
  expect(await launch(root, ['ask'])).toEqual({ code: 0, stdout: 'one\n', stderr: '' });
  expect(statSync(join(root, 'dist', kept!)).size).toBeGreaterThan(100);
});

test('it builds when a source has changed, and only then', async () => {
  const root = smallProject(saying('one'));
  lendPackages(root);
  const bundle = join(root, 'dist/ask.cjs');
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
  expect(existsSync(join(root, 'dist/ask.cjs'))).toBe(false);
});

test('the page is built for a browser, JSX for the page library, and a package in CommonJS may ask for node: modules', async () => {
  const root = smallProject({
    'src/client/page.ts': `import { hello } from './hello.ts'; document.title = hello;`,
    'src/client/hello.ts': `export const hello: string = 'a page';`,
    'src/server/ask-command.ts': `
      import old from 'old-package';
      import { view } from './view.tsx';
      export const main = async () => { console.log(old, JSON.stringify(view)); return 0; };`,
    'src/server/view.tsx': 'export const view = <p title={import.meta.url.slice(-12)}>½</p>;',
  });
  lendPackages(root);
  put(root, {
    'node_modules/old-package/package.json': '{}',
    'node_modules/old-package/index.js': `module.exports = require('path').basename('a/b');`,
    'node_modules/hono/package.json': JSON.stringify({ name: 'hono', exports: { './jsx/jsx-runtime': './jsx.js' } }),
    'node_modules/hono/jsx.js': 'exports.jsx = (tag, props) => [tag, props.title, props.children];',
  });
  expect(await launch(root, ['ask'])).toEqual({ code: 0, stdout: 'b ["p","dist/ask.cjs","½"]\n', stderr: '' });
  const { files } = JSON.parse(readFileSync(join(root, 'dist/client/files.json'), 'utf8')) as {
    files: { name: string; file: string; hash: string }[];
  };
  const { file, hash } = files.find(({ name }) => name === 'page.js')!;
  expect(file, 'a name that changes with the content').toMatch(/^page-[A-Z0-9]{8}\.js$/);
  const page = readFileSync(join(root, 'dist/client', file));
  expect(page.toString()).toContain('a page');
  expect(page.length).toBeLessThan(200);
  expect(createHash('sha256').update(page).digest('hex')).toBe(hash);
  expect(brotliDecompressSync(readFileSync(join(root, 'dist/client', `${file}.br`)))).toEqual(page);
  expect(gunzipSync(readFileSync(join(root, 'dist/client', `${file}.gz`)))).toEqual(page);
  const icon = readFileSync(join(root, 'dist/client/icon-192.png'));
  expect(icon.subarray(1, 4).toString()).toBe('PNG');
});
