import { execFile } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

const here = fileURLToPath(new URL('../../', import.meta.url));

export interface Ended {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** A small project of its own in a temporary folder, with this project's scripts, gone after the test. */
export function smallProject(files: Readonly<Record<string, string>> = {}): string {
  const root = mkdtempSync(join(tmpdir(), 'bladehand-'));
  onTestFinished(() => rmSync(root, { recursive: true, force: true }));
  cpSync(join(here, 'scripts'), join(root, 'scripts'), { recursive: true });
  put(root, {
    'package.json': JSON.stringify({
      name: 'small',
      type: 'module',
      scripts: { start: 'exec node scripts/run.cjs start' },
    }),
    'package-lock.json': JSON.stringify({ lockfileVersion: 3, packages: { '': {} } }),
    'fake/package.json': '{}',
    'fake/npm-cli.js': fakeNpm,
    ...files,
  });
  return root;
}

/** Writes files, making their folders. */
export function put(root: string, files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
}

/** Gives the project the packages of this one, as if they had been installed by hand. */
export function lendPackages(root: string): void {
  mkdirSync(join(root, 'node_modules'), { recursive: true });
  for (const name of ['esbuild', '@esbuild', 'vitest']) {
    symlinkSync(join(here, 'node_modules', name), join(root, 'node_modules', name));
  }
  put(root, { 'node_modules/.package-lock.json': JSON.stringify({ packages: {} }) });
}

/** Runs the launcher with the pretended npm, which fails where `npmFails` says so. */
export function launch(
  root: string,
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Ended> {
  return new Promise((settle) => {
    execFile(
      process.execPath,
      [join(root, 'scripts/run.cjs'), ...args],
      { env: { ...process.env, npm_execpath: join(root, 'fake/npm-cli.js'), LENT: here, ...env }, timeout: 20_000 },
      (fault, stdout, stderr) => settle({ code: fault ? Number(fault.code ?? 1) : 0, stdout, stderr }),
    );
  });
}

/** In place of npm: notes each call, talks on both streams as npm does, and links the packages instead of fetching them. */
const fakeNpm = `
  const fs = require('node:fs');
  fs.appendFileSync('calls.log', process.argv.slice(2).join(' ') + '\\n');
  console.log('installer talk');
  if (process.env.NPM_FAILS) process.exit(7);
  setTimeout(() => {
    fs.rmSync('node_modules', { recursive: true, force: true });
    fs.mkdirSync('node_modules');
    for (const name of ['esbuild', '@esbuild']) {
      fs.symlinkSync(process.env.LENT + 'node_modules/' + name, 'node_modules/' + name);
    }
  }, 200);
`;
