import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';

export interface Running {
  readonly port: number;
  readonly pid: number;
  stop(): Promise<void>;
}

/** Starts a server in a process of its own; ready when it has printed its address on standard output. */
export async function startServer(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Running> {
  const child = spawn(process.execPath, args, {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, HOST: '127.0.0.1', PORT: '0', ...env },
  });
  const ended = once(child, 'exit');
  const port = await portOf(child, args.join(' '));
  return {
    port,
    pid: child.pid!,
    async stop() {
      child.kill('SIGTERM');
      const late = setTimeout(() => child.kill('SIGKILL'), 3000);
      await ended;
      clearTimeout(late);
    },
  };
}

function portOf(child: ChildProcess, what: string): Promise<number> {
  return new Promise((settle, fail) => {
    let said = '';
    child.once('exit', (code) => fail(new Error(`${what} ended with code ${code} before it listened`)));
    child.stdout?.on('data', (chunk) => {
      said += chunk;
      const address = /http:\/\/[^\s/:]+:(\d{1,5})\b/.exec(said);
      if (address) settle(Number(address[1]));
    });
  });
}
