import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';

export interface PostgresServer {
  /** Address of its one database. */
  readonly url: string;
  stop(): Promise<void>;
}

/** Where PostgreSQL's programs are: on the path, or where Debian's packages put them, the newest first. */
export function postgresPrograms(): string | undefined {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    ...versions.map((version) => join(debian, version, 'bin')),
    ...(process.env.PATH ?? '').split(delimiter),
  ];
  return folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres')));
}

/** Starts a server of its own in a temporary folder, reached by a socket in there and by nothing else. */
export async function startPostgres(programs: string): Promise<PostgresServer> {
  const folder = mkdtempSync(join(tmpdir(), 'bladehand-pg-'));
  const user = plainUser();
  if (user) chownSync(folder, user.uid, user.gid);
  const options = { ...user, cwd: folder, env: { PATH: process.env.PATH, LC_ALL: 'C' } };
  const data = join(folder, 'data');
  const made = spawnSync(join(programs, 'initdb'), ['-D', data, '-U', 'postgres', '-A', 'trust', '-E', 'UTF8', '-N'], {
    ...options,
    encoding: 'utf8',
  });
  if (made.status !== 0) throw new Error(`initdb failed: ${made.stderr || made.error}`);
  const server = spawn(join(programs, 'postgres'), ['-D', data, '-k', folder, '-c', 'listen_addresses='], {
    ...options,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  await ready(server);
  return {
    url: `postgresql://postgres@/postgres?host=${encodeURIComponent(folder)}`,
    async stop() {
      if (server.exitCode === null) {
        server.kill('SIGINT');
        await once(server, 'close');
      }
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** PostgreSQL refuses to run as root, so it runs as its own user, else as nobody. */
function plainUser(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined;
  for (const name of ['postgres', 'nobody']) {
    const [uid, gid] = ['-u', '-g'].map((flag) => spawnSync('id', [flag, name], { encoding: 'utf8' }).stdout.trim());
    if (uid && gid) return { uid: Number(uid), gid: Number(gid) };
  }
  throw new Error('PostgreSQL does not run as root, and there is neither a user postgres nor nobody.');
}

function ready(server: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = '';
    server.stderr!.on('data', (chunk) => {
      said += chunk;
      if (said.includes('ready to accept connections')) resolve();
    });
    server.once('close', () => reject(new Error(`postgres ended: ${said}`)));
  });
}
