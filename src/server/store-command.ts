import { accessSync, constants, existsSync } from 'node:fs';
import { describe } from './fault.ts';
import { addKeeper, revokeKeepers } from './gaps/gaps.ts';
import { backUp, restore } from './store/backup.ts';
import { StoreFault } from './store/fault.ts';
import { openStore, placeFrom } from './store/open.ts';
import type { Store } from './store/store.ts';
import { store as words } from './wording/store.en.ts';

/** `npm run backup`, `npm run restore` and `npm run keeper`. Resolves to the exit status: 0 done, 1 could not, 2 called in a way that cannot be read. */
export async function main([name, ...args]: string[]): Promise<number> {
  const { command } = words;
  if (args.includes('-h') || args.includes('--help')) {
    process.stdout.write(name === 'keeper' ? command.keeperHelp : command.backupHelp);
    return 0;
  }
  if (name === 'keeper') return keeper(args);
  const replace = name === 'restore' && args.includes('--replace');
  const [file, ...others] = replace ? args.filter((arg) => arg !== '--replace') : args;
  if (file === undefined || file.startsWith('-') || others.length > 0)
    return complain(`${command.oneFile}\n${command.backupHelp}`, 2);
  if (name === 'backup' && existsSync(file)) return complain(command.exists(file), 2);
  if (name === 'restore' && !isReadable(file)) return complain(command.noFile(file), 2);
  return withStore(async (store) => {
    const tally = name === 'backup' ? await backUp(store, file) : await restore(store, file, replace);
    const said =
      name === 'backup'
        ? command.backedUp(file, tally.logs, tally.entries)
        : command.restored(tally.logs, tally.entries);
    process.stdout.write(`${said}\n`);
  });
}

/** `npm run keeper`: a link by which the keeper of the rules reads what found no answer; with --revoke all of them are taken back. */
async function keeper(args: readonly string[]): Promise<number> {
  const { command } = words;
  const revoke = args.length === 1 && args[0] === '--revoke';
  if (args.length > 0 && !revoke) return complain(command.keeperHelp, 2);
  const now = new Date().toISOString();
  return withStore(async (store) => {
    const said = revoke
      ? command.keepersRevoked(await revokeKeepers(store, now))
      : command.keeperMade(`/keeper/${await addKeeper(store, now)}`);
    process.stdout.write(`${said}\n`);
  });
}

async function withStore(work: (store: Store) => Promise<void>): Promise<number> {
  try {
    const store = await openStore(placeFrom(process.env));
    try {
      await work(store);
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
