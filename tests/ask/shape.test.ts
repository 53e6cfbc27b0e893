import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply } from '../../src/ask/reply.ts';
import { replySchema } from '../../src/server/schema/reply.ts';
import { soundReply } from './sound.ts';

/** Every text of every corpus as a question: whatever comes of it, the reply has its full shape. */
const folder = new URL('../corpus/', import.meta.url);

/** The texts of a line of JSON, wherever they stand in it; of any other line, the line. */
function textsOf(file: string, line: string): string[] {
  if (!file.endsWith('.jsonl')) return [line];
  const texts: string[] = [];
  const gather = (value: unknown): void => {
    if (typeof value === 'string') texts.push(value);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(gather);
  };
  gather(JSON.parse(line));
  return texts;
}

describe.each(readdirSync(folder).filter((file) => /\.(txt|jsonl)$/.test(file)))('%s', (file) => {
  const lines = readFileSync(new URL(file, folder), 'utf8')
    .split('\n')
    .filter((line) => line.trim() && !line.startsWith('#'));
  const questions = [...new Set(lines.flatMap((line) => textsOf(file, line)))].filter((text) => text.length <= 2000);

  test('has texts', () => expect(questions.length).toBeGreaterThan(0));

  test.each(['us', 'metric'] as const)('every text gets a reply of full shape, in %s units', (units) => {
    const faults = questions.flatMap((question) =>
      faultsOf(question, ask({ question, units })).map((fault) => `${question}: ${fault}`),
    );
    expect(faults).toEqual([]);
  });
});

function faultsOf(question: string, reply: Reply): string[] {
  const open = reply.kind === 'clarify' || reply.kind === 'unknown';
  const rules: readonly (readonly [boolean, string])[] = [
    [
      (reply.reason !== undefined) === open,
      `${reply.kind} with reason ${reply.reason}: there is one when there is no answer, and only then`,
    ],
    [reply.kind !== 'value' || reply.values.length > 0, 'a value without figures'],
    [reply.kind !== 'verdict' || reply.verdict !== undefined, 'a verdict without one'],
    [
      (reply.kind === 'clarify') === (reply.clarify !== undefined) || reply.kind === 'fault',
      'what is asked stands in a clarify, or beside a fault that looks like another, and there alone',
    ],
  ];
  const faults = rules.flatMap(([holds, fault]) => (holds ? [] : [fault]));
  const { error } = replySchema.safeParse(reply);
  if (error) faults.push(error.message);
  try {
    soundReply(reply, question);
  } catch (fault) {
    faults.push(String(fault));
  }
  return faults;
}
