import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The root of the project, with a slash at its end. */
export const root = fileURLToPath(new URL('../../', import.meta.url));

export interface SourceFile {
  /** From the root of the project, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** Every file under a folder whose name ends in one of these, sorted; none when there is no such folder. */
export function filesUnder(folder: string, endings: readonly string[]): SourceFile[] {
  const found: string[] = [];
  const look = (at: string): void => {
    for (const entry of readdirSync(join(root, at), { withFileTypes: true })) {
      const path = `${at}/${entry.name}`;
      if (entry.isDirectory()) look(path);
      else if (endings.some((ending) => entry.name.endsWith(ending))) found.push(path);
    }
  };
  if (existsSync(join(root, folder))) look(folder);
  return found.sort().map(read);
}

/** Every file that is, or may come to be, in the repository: neither ignored nor installed nor built. */
export function allFiles(): SourceFile[] {
  const listed = listedByGit() ?? everyFile('.');
  return listed.filter((path) => statSync(join(root, path), { throwIfNoEntry: false })?.isFile()).map(read);
}

function listedByGit(): string[] | undefined {
  try {
    const args = ['ls-files', '-z', '--cached', '--others', '--exclude-standard'];
    const out = execFileSync('git', args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    return out.split('\0').filter(Boolean);
  } catch {
    return undefined; // A copy of the files alone.
  }
}

const notOurs = new Set(['node_modules', 'dist', '.git']);

function everyFile(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '.' ? entry.name : `${folder}/${entry.name}`;
    if (!entry.isDirectory()) return [path];
    return notOurs.has(entry.name) ? [] : everyFile(path);
  });
}

function read(path: string): SourceFile {
  return { path, text: readFileSync(join(root, path), 'utf8') };
}

/** The path that a relative import in `from` means. */
export function resolveImport(from: string, specifier: string): string {
  return join(dirname(from), specifier).replaceAll('\\', '/');
}
