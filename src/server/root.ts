import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Where a file of the project is, whether this runs from its source or from a bundle beside it. */
export function fromRoot(path: string): string {
  found ??= root();
  return join(found, path);
}

let found: string | undefined;

function root(): string {
  for (let folder = dirname(fileURLToPath(import.meta.url)); ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'package.json')) && existsSync(join(folder, 'src/server/assets'))) return folder;
    if (folder === dirname(folder))
      throw new Error('The folder of the program was not found: run it where it was put.');
  }
}
