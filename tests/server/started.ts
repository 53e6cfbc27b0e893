import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { afterEach } from 'vitest';

/**
 * What starts the server as `npm start` does, and waits for its first line or for its end. To be called once in a file:
 * whatever was started ends with its test.
 */
export function starting(signal: 'SIGTERM' | 'SIGKILL' = 'SIGKILL') {
  const children: ChildProcess[] = [];
  afterEach(() => {
    for (const child of children.splice(0)) child.kill(signal);
  });
  return async (env: Record<string, string>, args: string[] = []) => {
    const child = spawn(process.execPath, ['scripts/run.mjs', 'start', ...args], { env: { ...process.env, ...env } });
    children.push(child);
    const said = { out: '', err: '' };
    child.stdout.on('data', (chunk) => {
      said.out += chunk;
    });
    child.stderr.on('data', (chunk) => {
      said.err += chunk;
    });
    const ended = once(child, 'close').then(([code]) => code as number | null);
    await Promise.race([once(child.stdout, 'data'), ended]);
    return { child, said, ended, address: /http:\/\/\S+/.exec(said.out)?.[0] ?? '' };
  };
}
