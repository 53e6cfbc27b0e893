import { ask, refuse } from '../ask/ask.ts';
import { knowledge } from '../rules/knowledge.ts';
import { runCommand } from './command/run.ts';

/** `npm run ask`: answers on the command line. Resolves to the exit status, as its help lists them. */
export async function main(argv: string[]): Promise<number> {
  const { stdin, stdout, stderr } = process;
  return runCommand(argv, { ask, refuse, version: knowledge.version, stdin, stdout, stderr });
}
