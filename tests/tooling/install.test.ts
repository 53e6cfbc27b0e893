import { existsSync, readFileSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { launch, lendPackages, put, smallProject } from './project.ts';

const command = {
  'src/server/ask-command.ts': `export async function main(argv: string[]) { console.log(argv.join(' ')); return 0; }`,
};

function installsIn(root: string): string[] {
  const log = join(root, 'calls.log');
  return existsSync(log) ? readFileSync(log, 'utf8').trim().split('\n') : [];
}

test('from nothing: it installs, builds and answers, and nothing but the answer is on standard output', async () => {
  const root = smallProject(command);
  const first = await launch(root, ['ask', 'how', 'deep']);
  expect(first).toMatchObject({ code: 0, stdout: 'how deep\n' });
  expect(first.stderr).toContain('installer talk');
  expect(installsIn(root)).toEqual([expect.stringContaining('ci --include=dev')]);

  expect(await launch(root, ['ask', 'again'])).toEqual({ code: 0, stdout: 'again\n', stderr: '' });
  expect(installsIn(root)).toHaveLength(1);
});

test('it installs again when the lock file says something else, not when only its time is new', async () => {
  const root = smallProject(command);
  await launch(root, ['ask', 'x']);
  utimesSync(join(root, 'package-lock.json'), new Date(1), new Date(1));
  await launch(root, ['ask', 'x']);
  expect(installsIn(root)).toHaveLength(1);

  put(root, { 'package-lock.json': JSON.stringify({ packages: { '': {}, 'node_modules/a': { version: '1.0.0' } } }) });
  await launch(root, ['ask', 'x']);
  expect(installsIn(root)).toHaveLength(2);
});

test('two at once install once, and both answer', async () => {
  const root = smallProject(command);
  const both = await Promise.all([launch(root, ['ask', 'one']), launch(root, ['ask', 'two'])]);
  expect(both.map(({ code, stdout }) => [code, stdout])).toEqual([
    [0, 'one\n'],
    [0, 'two\n'],
  ]);
  expect(installsIn(root)).toHaveLength(1);
});

test('a failed install says what to do, and is tried again', async () => {
  const root = smallProject(command);
  const failed = await launch(root, ['ask', 'x'], { NPM_FAILS: '1' });
  expect(failed).toMatchObject({ code: 1, stdout: '' });
  expect(failed.stderr).toMatch(/npm ci ended with code 7.*registry/);
  expect(await launch(root, ['ask', 'x'])).toMatchObject({ code: 0, stdout: 'x\n' });
});

test("a person's own npm ci is taken as it is", async () => {
  const root = smallProject(command);
  lendPackages(root);
  expect(await launch(root, ['ask', 'x'])).toEqual({ code: 0, stdout: 'x\n', stderr: '' });
  expect(installsIn(root)).toEqual([]);
});

test('but not one of other versions', async () => {
  const lock = { packages: { '': {}, 'node_modules/a': { version: '2.0.0' } } };
  const root = smallProject({ ...command, 'package-lock.json': JSON.stringify(lock) });
  lendPackages(root);
  const installed = { packages: { 'node_modules/a': { version: '1.0.0' } } };
  put(root, { 'node_modules/.package-lock.json': JSON.stringify(installed) });
  await launch(root, ['ask', 'x']);
  expect(installsIn(root)).toHaveLength(1);
});
