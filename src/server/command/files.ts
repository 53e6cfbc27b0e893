import { readFileSync } from 'node:fs';
import { bodyLimit } from '../limits.ts';
import { en } from '../wording/en.ts';
import type { Call } from './call.ts';

/** What the files named in a call hold, as they go with every question of it. */
export interface Files {
  readonly agency?: unknown;
  readonly rates?: unknown;
}

/** Reads the files a call names: what they hold, or a sentence that says which cannot be read and what to do. */
export function readFiles(call: Pick<Call, 'agency' | 'rates'>): Files | string {
  const files: { agency?: unknown; rates?: unknown } = {};
  for (const option of ['agency', 'rates'] as const) {
    const path = call[option];
    if (path === undefined) continue;
    let text: string;
    try {
      text = readFileSync(path, 'utf8');
    } catch {
      return en.command.noFile(option, path);
    }
    if (text.length > bodyLimit) return en.command.fileTooLong(option, path, bodyLimit);
    try {
      // A file with nothing but null is no file left out: it is judged as any other.
      files[option] = JSON.parse(text.replace(/^\ufeff/, '')) ?? [];
    } catch (fault) {
      return en.command.fileNotJson(option, path, (fault as Error).message);
    }
  }
  return files;
}
