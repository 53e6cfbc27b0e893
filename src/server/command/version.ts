import { readFileSync } from 'node:fs';
import { fromRoot } from '../root.ts';
import { en } from '../wording/en.ts';

/** Version of the program and of the rules that answer. */
export function versionLine(rules: string): string {
  const { version } = JSON.parse(readFileSync(fromRoot('package.json'), 'utf8')) as { version: string };
  return en.command.version(version, rules);
}
