import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { withLock } from '../../scripts/lock.mjs';

function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'bladehand-lock-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Leaves a lock as a process that died would. */
function leaveLock(path: string, pid: number): void {
  mkdirSync(path);
  writeFileSync(join(path, 'pid'), String(pid));
}

const noSuchProcess = spawnSync(process.execPath, ['--version']).pid;

test('of several processes one works at a time', async () => {
  const folder = emptyFolder();
  const script = `
    import { withLock } from ${JSON.stringify(fileURLToPath(new URL('../../scripts/lock.mjs', import.meta.url)))};
    import { appendFileSync } from 'node:fs';
    await withLock('lock', 'a test', async () => {
      appendFileSync('log', 'in ' + process.pid + '\\n');
      await new Promise((wake) => setTimeout(wake, 50));
      appendFileSync('log', 'out ' + process.pid + '\\n');
    });`;
  const args = ['--input-type=module', '--eval', script];
  const codes = await Promise.all(
    [1, 2, 3].map(
      () => new Promise((settle) => spawn(process.execPath, args, { cwd: folder, stdio: 'ignore' }).on('exit', settle)),
    ),
  );
  expect(codes).toEqual([0, 0, 0]);
  const lines = readFileSync(join(folder, 'log'), 'utf8').trim().split('\n');
  expect(lines).toHaveLength(6);
  for (let at = 0; at < lines.length; at += 2) expect(lines[at + 1]).toBe(lines[at]!.replace('in', 'out'));
});

test('the lock is given back when the work fails', async () => {
  const lock = join(emptyFolder(), 'lock');
  await expect(withLock(lock, 'a test', () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(existsSync(lock)).toBe(false);
  expect(await withLock(lock, 'a test', () => 7)).toBe(7);
});

test('a lock of a process that has died is put aside', async () => {
  const lock = join(emptyFolder(), 'lock');
  leaveLock(lock, noSuchProcess);
  expect(await withLock(lock, 'a test', () => 'mine')).toBe('mine');
});

test('so is one that is much too old, though its number is in use again', async () => {
  const lock = join(emptyFolder(), 'lock');
  leaveLock(lock, process.pid);
  const hourAgo = new Date(Date.now() - 3_600_000);
  utimesSync(lock, hourAgo, hourAgo);
  expect(await withLock(lock, 'a test', () => 'mine')).toBe('mine');
});

test('a lock that is held is waited for', async () => {
  const lock = join(emptyFolder(), 'lock');
  leaveLock(lock, process.pid);
  let done = false;
  const waiting = withLock(lock, 'a test', () => {
    done = true;
  });
  await new Promise((wake) => setTimeout(wake, 250));
  expect(done).toBe(false);
  rmSync(lock, { recursive: true });
  await waiting;
  expect(done).toBe(true);
});
