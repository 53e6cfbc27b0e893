import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
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
  const lines = readFileSync(new URL(file, folder), 'utf8').split('\n').filter((line) => line.trim() && !line.startsWith('#'));
  const questions = [...new Set(lines.flatMap((line) => textsOf(file, line)))].filter((text) => text.length <= 2000);

  test('has texts', () => expect(questions.length).toBeGreaterThan(0));

  test.each(['us', 'metric'] as const)('every text gets a reply of full shape, in %s units', (units) => {
    for (const question of questions) {
      const reply = ask({ question, units });
      const { error } = replySchema.safeParse(reply);
      expect(error && `${question}: ${error.message}`).toBeUndefined();
      soundReply(reply, question);
      const open = reply.kind === 'clarify' || reply.kind === 'unknown';
      expect(reply.reason !== undefined, `${question}: ${reply.kind} has a reason only when there is no answer`).toBe(open);
      if (reply.kind === 'value') expect(reply.values.length, question).toBeGreaterThan(0);
      if (reply.kind === 'verdict') expect(reply.verdict, question).toBeDefined();
      if (reply.kind === 'clarify') expect(reply.clarify, question).toBeDefined();
    }
  });
});
