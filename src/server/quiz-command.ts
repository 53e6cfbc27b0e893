import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { buildQuiz, type QuizSet } from '../ask/quiz/build.ts';
import { asCsv } from '../ask/quiz/export/csv.ts';
import { asJson } from '../ask/quiz/export/json.ts';
import { qtiPackage } from '../ask/quiz/export/qti-package.ts';
import { asText } from '../ask/quiz/export/text.ts';
import { knowledge } from '../rules/knowledge.ts';
import { type QuizCall, readQuizCall } from './command/quiz-call.ts';
import { isClosed } from './command/write.ts';
import { quizCommand as words } from './wording/quiz.en.ts';

/** `npm run quiz`: makes a quiz on the command line. Resolves to the exit status, as its help lists them. */
export async function main(argv: readonly string[]): Promise<number> {
  process.stdout.on('error', () => {});
  const call = readQuizCall(argv);
  if (call === 'help') return print(words.help);
  return 'wrong' in call ? say(`${call.wrong}\n${words.tryHelp}`, 2) : run(call);
}

async function run(call: QuizCall): Promise<number> {
  if (call.format === 'qti3' && call.output === undefined && process.stdout.isTTY) return say(words.needsFile, 2);
  const built = buildQuiz(knowledge, call.request);
  if ('fault' in built) return say(built.fault, 4);
  const content = contentOf(built.set, call);
  if (call.output === undefined) return print(content);
  // The command runs in the folder of the project; a file is meant from where it was called.
  const file = resolve(process.env.INIT_CWD ?? '.', call.output);
  try {
    writeFileSync(file, content);
  } catch (fault) {
    return say(words.notWritten(call.output, (fault as Error).message.split(',', 1)[0] ?? ''), 1);
  }
  return say(words.written(call.output, built.set.items.length), 0);
}

function contentOf(set: QuizSet, { format, key, spreadsheet }: QuizCall): string | Uint8Array {
  if (format === 'json') return asJson(set);
  if (format === 'csv') return asCsv(set, { spreadsheet });
  return format === 'qti3' ? qtiPackage(set) : asText(set, { key });
}

function print(content: string | Uint8Array): Promise<number> {
  return new Promise((settle, fail) => {
    // Whoever read the set has had enough of it, as `head` does.
    process.stdout.write(content, (fault) => (fault && !isClosed(fault) ? fail(fault) : settle(0)));
  });
}

function say(sentence: string, status: number): number {
  process.stderr.write(`${sentence}\n`);
  return status;
}
