/** What is said of the store, to the person who runs the server. `where` is the file or the server it is in; it may be empty. */
export const store = {
  faults: {
    none: () => 'This server keeps no shared jobs: it was started without a store.',
    held: (where: string) =>
      `Another program holds the store${at(where)}, most likely a server that runs. Only one may: stop that one first.`,
    full: () =>
      'The disk of the server is full: nothing of this was kept, all that was kept before is there. Make room, then send it again.',
    damaged: (where: string) =>
      `The store${at(where)} is damaged or no store of ours. Put it aside, and bring the last backup back with: npm run restore -- FILE`,
    unopened: (where: string) =>
      `The store${at(where)} cannot be opened. Check that its folder is there, or name another one in DATA.`,
    unwritable: (where: string) =>
      `The store${at(where)} may not be written to. Give the user of the server the right to, or name another folder in DATA.`,
    io: (where: string) =>
      `The disk failed while the store${at(where)} was read or written. Nothing of this was kept. Check the disk.`,
    refused: () => 'The database server turned us away. Check user, password and database name in DATABASE_URL.',
    unreachable: () => 'The database server cannot be reached. Check that it runs, and host and port in DATABASE_URL.',
    newer: () => 'The store was written by a newer version of this program. Run that version; nothing was touched.',
    badName: () => 'That is no name of a log.',
    notEmpty: () =>
      'There is something in the store already, so nothing was put back. To do away with what is there: npm run restore -- FILE --replace',
    badBackup: (where: string) =>
      `That is no whole backup${where ? ` (${where})` : ''}; nothing was changed. Take another one.`,
    failed: () => 'The store failed and nothing of this was kept. Send it again; what was kept before is there.',
  },
  command: {
    backupHelp: [
      'npm run backup -- FILE               writes all that is kept into one file',
      'npm run restore -- FILE              brings it back, into a store with nothing in it',
      'npm run restore -- FILE --replace    brings it back in place of what is there',
      '',
      'The store is the file bladehand.db in the folder DATA (data, if not set), or the PostgreSQL server that',
      'DATABASE_URL names; a backup of the one fits the other. The file of a server that runs is held by it: stop it first.',
      '',
    ].join('\n'),
    keeperHelp: [
      'npm run --silent keeper                makes a link by which the keeper of the rules reads what found no answer',
      'npm run --silent keeper -- --revoke    takes all such links back',
      '',
      'The file of a server that runs is held by it: stop it first.',
      '',
    ].join('\n'),
    keeperMade: (path: string) =>
      `${path}\nPut the address of the server before it. Whoever has this link can read and clear the questions; it is not shown again.`,
    keepersRevoked: (count: number) => `${count} ${count === 1 ? 'link' : 'links'} taken back.`,
    oneFile: 'Name one file.',
    exists: (file: string) => `${file} is there already. Name a new file.`,
    noFile: (file: string) => `${file} cannot be read. Name a file that a backup wrote.`,
    backedUp: (file: string, logs: number, entries: number) =>
      `Wrote ${file}: ${logs} ${logs === 1 ? 'log' : 'logs'}, ${entries} ${entries === 1 ? 'entry' : 'entries'}.`,
    restored: (logs: number, entries: number) =>
      `Brought back ${logs} ${logs === 1 ? 'log' : 'logs'}, ${entries} ${entries === 1 ? 'entry' : 'entries'}.`,
  },
} as const;

const at = (where: string): string => (where ? ` ${where}` : '');
