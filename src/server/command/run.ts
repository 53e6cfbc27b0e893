import { describe } from '../fault.ts';
import { questionLimit } from '../limits.ts';
import { en } from '../wording/en.ts';
import { type Call, readCall } from './call.ts';
import { fileFaults } from './file-faults.ts';
import { readFiles } from './files.ts';
import { answerLines } from './lines.ts';
import { readAll } from './read-all.ts';
import { statusOf } from './status.ts';
import { textOf } from './text.ts';
import { versionLine } from './version.ts';
import type { World } from './world.ts';
import { isClosed, write } from './write.ts';

/** Runs one call of the command. Resolves to its exit status; answers alone go to standard output. */
export async function runCommand(argv: readonly string[], world: World): Promise<number> {
  // Every write says so itself when its reader is gone.
  world.stdout.on('error', () => {});
  try {
    return await run(readCall(argv), world);
  } catch (fault) {
    // Whoever read the answers has had enough of them, as `head` does.
    if (isClosed(fault)) return 0;
    await write(world.stderr, `${en.command.fault}\n${en.command.faultDetail(describe(fault))}\n`);
    return 1;
  }
}

async function run(call: Call | string, world: World): Promise<number> {
  if (typeof call === 'string') return usage(call, world);
  if (call.help) return print(en.command.help, world);
  if (call.version) return print(`${versionLine(world.version)}\n`, world);
  const files = readFiles(call);
  if (typeof files === 'string') return usage(files, world);
  for (const fault of fileFaults(call, files)) await write(world.stderr, `${fault}\n`);
  if (call.jsonl) return answerLines(call, files, world);
  if (call.question === undefined && world.stdin.isTTY) return usage(en.command.short, world);
  const question = call.question ?? (await readAll(world.stdin, questionLimit)).trim();
  if (question.trim() === '') return usage(en.questionMissing, world);
  if (question.length > questionLimit) return usage(en.questionTooLong(questionLimit), world);
  const { units, lang } = call;
  const reply = world.ask({ question, ...(units ? { units } : {}), ...(lang ? { lang } : {}), ...files });
  await write(world.stdout, call.json ? `${JSON.stringify(reply, null, 2)}\n` : textOf(reply, call));
  return statusOf(reply);
}

async function usage(sentence: string, world: World): Promise<number> {
  await write(world.stderr, `${sentence}\n${en.command.tryHelp}\n`);
  return 2;
}

async function print(text: string, world: World): Promise<number> {
  await write(world.stdout, text);
  return 0;
}
