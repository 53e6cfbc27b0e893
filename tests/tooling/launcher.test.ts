import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { launch, lendPackages, put, smallProject } from './project.ts';

const server = {
  'src/server/start.ts': `
    import { createServer } from 'node:http';
    export function main(): Promise<number> {
      return new Promise((settle) => {
        const server = createServer((_, reply) => reply.end('hello'));
        server.listen(0, '127.0.0.1', () => console.log('listens on http://127.0.0.1:' + server.address().port));
        const stop = () => { console.log('bye'); server.close(); settle(3); };
        process.once('SIGTERM', stop);
        process.once('SIGINT', stop);
        setInterval(() => {}, 1000);
      });
    }`,
};

function readyProject(files: Record<string, string>): string {
  const root = smallProject(files);
  lendPackages(root);
  return root;
}

/** Starts a server and gives its process once it has told its address, with all it has printed so far. */
async function started(
  program: string,
  args: string[],
  cwd: string,
): Promise<{ child: ChildProcess; said: () => string }> {
  const child = spawn(program, args, { cwd, stdio: ['ignore', 'pipe', 'inherit'] });
  onTestFinished(() => void child.kill('SIGKILL'));
  let said = '';
  await new Promise<void>((settle, fail) => {
    child.on('exit', () => fail(new Error(`ended early: ${said}`)));
    child.stdout.on('data', (chunk) => {
      said += chunk;
      if (/http:\S+\n/.test(said)) settle();
    });
  });
  return { child, said: () => said };
}

test.each(['SIGTERM', 'SIGINT'] as const)('%s ends the server in its own way, with its own code', async (signal) => {
  const root = readyProject(server);
  const { child, said } = await started(process.execPath, [join(root, 'scripts/run.mjs'), 'start'], root);
  child.kill(signal);
  expect(await once(child, 'exit')).toEqual([3, null]);
  expect(said()).toContain('bye');
});

test('a signal to npm alone reaches the server, and the port is free afterwards', async () => {
  const root = readyProject(server);
  const { child, said } = await started('npm', ['start', '--silent'], root);
  const address = /http:\S+/.exec(said())![0];
  expect(await (await fetch(address)).text()).toBe('hello');
  child.kill('SIGTERM');
  await once(child, 'close');
  expect(said()).toContain('bye');
  await expect(fetch(address)).rejects.toThrow();
});

test('an exit code comes through, and a word it does not know is refused with those it knows', async () => {
  const root = readyProject({ 'src/server/ask-command.ts': 'export const main = async () => 4;' });
  expect((await launch(root, ['ask'])).code).toBe(4);
  const refused = await launch(root, ['sing']);
  expect(refused).toMatchObject({ code: 1, stdout: '' });
  expect(refused.stderr).toMatch(/start, ask, .*test/);
  expect((await launch(root, ['toString'])).code).toBe(1);
});

test('a fault in the program is shown with its place, one worded for people without', async () => {
  const root = readyProject({ 'src/server/ask-command.ts': 'export const main = async () => null.x;' });
  expect((await launch(root, ['ask'])).stderr).toMatch(/TypeError[\s\S]*ask\.cjs/);
  put(root, { 'src/server/ask-command.ts': `export const main = async () => { throw new Error('Say what.'); };` });
  expect((await launch(root, ['ask'])).stderr).toBe('Say what.\n');
});
