import { accessSync, constants, existsSync } from 'node:fs';
import { describe } from './fault.ts';
import { backUp, restore } from './store/backup.ts';
import { StoreFault } from './store/fault.ts';
import { openStore, placeFrom } from './store/open.ts';
import { store as words } from './wording/store.en.ts';

/** `npm run backup` and `npm run restore`. Resolves to the exit status: 0 done, 1 could not, 2 called in a way that cannot be read. */
export async function main([name, ...args]: string[]): Promise<number> {
  const { command } = words;
  if (args.includes('-h') || args.includes('--help')) {
    process.stdout.write(command.backupHelp);
    return 0;
  }
  const replace = name === 'restore' && args.includes('--replace');
  const [file, ...others] = replace ? args.filter((arg) => arg !== '--replace') : args;
  if (file === undefined || file.startsWith('-') || others.length > 0)
    return complain(`${command.oneFile}\n${command.backupHelp}`, 2);
  if (name === 'backup' && existsSync(file)) return complain(command.exists(file), 2);
  if (name === 'restore' && !isReadable(file)) return complain(command.noFile(file), 2);
  try {
    const store = await openStore(placeFrom(process.env));
    try {
      const tally = name === 'backup' ? await backUp(store, file) : await restore(store, file, replace);
      const said =
        name === 'backup'
          ? command.backedUp(file, tally.logs, tally.entries)
          : command.restored(tally.logs, tally.entries);
      process.stdout.write(`${said}\n`);
    } finally {
      await store.close();
    }
    return 0;
  } catch (fault) {
    return complain(fault instanceof StoreFault ? fault.message : describe(fault), 1);
  }
}

function complain(sentence: string, status: number): number {
  process.stderr.write(`${sentence}\n`);
  return status;
}

function isReadable(file: string): boolean {
  try {
    accessSync(file, constants.R_OK);
    return true;
  } catch {
    return false;
  }
}
