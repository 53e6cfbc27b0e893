import { ask } from '../ask/ask.ts';
import { createApp } from './app.ts';
import { listenUntilStopped } from './listen.ts';
import { lazyStore, openStore, placeFrom } from './store/open.ts';
import { en } from './wording/en.ts';

/**
 * `npm start`: serves the page and the API on HOST and PORT until it is told to stop, and prints its address on one line.
 * Resolves to the exit status: 0 stopped, 1 could not listen, 2 called in a way that cannot be read.
 */
export async function main(argv: string[]): Promise<number> {
  const [argument] = argv;
  if (argument === '-h' || argument === '--help') {
    process.stdout.write(en.start.help);
    return 0;
  }
  if (argument !== undefined) return complain(en.start.argument(argument), 2);
  const { HOST, PORT } = process.env;
  const port = PORT ? portIn(PORT) : 8787;
  if (port === undefined) return complain(en.start.badPort(PORT ?? ''), 2);
  const store = lazyStore(() => openStore(placeFrom(process.env)));
  const app = createApp({ ask, report: (line) => complain(line, 1), store: store.get });
  const host = HOST || '127.0.0.1';
  try {
    await listenUntilStopped(app, host, port, (address) => process.stdout.write(`${en.listening(address)}\n`));
    return 0;
  } catch (fault) {
    return complain(whyNot(fault, host, port), 1);
  } finally {
    await store.close();
  }
}

function complain(sentence: string, status: number): number {
  process.stderr.write(`${sentence}\n`);
  return status;
}

function portIn(text: string): number | undefined {
  const port = /^\d{1,5}$/.test(text.trim()) ? Number(text) : Number.NaN;
  return port <= 65535 ? port : undefined;
}

function whyNot(fault: unknown, host: string, port: number): string {
  const { inUse, notAllowed, noAddress, failed } = en.start;
  const { code, message } = fault as NodeJS.ErrnoException;
  if (code === 'EADDRINUSE') return inUse(port);
  if (code === 'EACCES') return notAllowed(port);
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND' || code === 'EAI_AGAIN') return noAddress(host);
  return failed(message);
}
