import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const here = import.meta.dirname;

/** The lines of a file of this folder that are neither empty nor a remark. */
export function linesOf(name: string): string[] {
  return readFileSync(join(here, name), 'utf8')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#'));
}

/** Lines of `card | what is typed`. */
export function pairsOf(name: string): { readonly card: string; readonly text: string }[] {
  return linesOf(name).map((line) => {
    const [card = '', ...text] = line.split(' | ');
    return { card, text: text.join(' | ') };
  });
}
