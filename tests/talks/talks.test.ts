import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply, Request } from '../../src/ask/reply.ts';
import { createApp } from '../../src/server/app.ts';
import { replySchema } from '../../src/server/schema/reply.ts';
import { soundReply } from '../ask/sound.ts';
import { readTalk } from './talk.ts';
import { holds, type Said, type Turn } from './verbs.ts';

/** Whole conversations, through the library and through HTTP; the two must answer alike. */
const folder = new URL('.', import.meta.url);
const app = createApp({ ask });
const gapsFile = 'known-gaps.txt';
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.txt') && file !== gapsFile)
  .sort();

/**
 * Talks that do not go as they should yet, with the reason. One that comes to hold must be taken off the list, so the list
 * can only get shorter; even these must give sound replies on every turn.
 */
const gaps = new Map(
  readFileSync(new URL(gapsFile, folder), 'utf8')
    .split('\n')
    .filter((line) => line.trim() && !line.startsWith('#'))
    .map((line) => line.split(': ', 2) as [string, string]),
);

test('the known gaps name talks that there are, each with its reason', () => {
  for (const [name, why] of gaps) {
    expect(names, 'a talk that there is').toContain(name);
    expect(why?.trim(), name).toBeTruthy();
  }
});

for (const name of names) {
  const { settings, turns } = readTalk(readFileSync(new URL(name, folder), 'utf8'));
  describe(name.replace('.txt', '').replaceAll('-', ' '), () => {
    let last: Reply | undefined;
    const faults: string[] = [];
    for (const turn of turns) {
      test(`line ${turn.line}: ${Object.values(turn.said)[0]}`, async () => {
        const before = last;
        last = undefined;
        const wanting: string[] = [];
        if ('presses' in turn.said && !buttonsOf(before).has(turn.said.presses))
          wanting.push(`no button "${turn.said.presses}"`);
        const request = requestOf(turn, before, settings);
        const reply = ask(request);
        last = reply;
        expect(await overHttp(request)).toEqual(JSON.parse(JSON.stringify(reply)));
        expect(replySchema.safeParse(reply).error).toBeUndefined();
        soundReply(reply, request.question);
        wanting.push(...turn.wants.flatMap((want) => faultOf(want, reply)));
        if (gaps.has(name)) faults.push(...wanting);
        else expect(wanting.join('\n\n'), reply.text).toBe('');
      });
    }
    if (gaps.has(name)) {
      test('does not hold yet; when it does, take it off the known gaps', () =>
        expect(faults.length).toBeGreaterThan(0));
    }
  });
}

function faultOf(want: string, reply: Reply): string[] {
  try {
    holds(want, reply);
    return [];
  } catch (fault) {
    return [`${want}: ${fault instanceof Error ? fault.message : fault}`];
  }
}

function requestOf({ said, sends }: Turn, before: Reply | undefined, settings: object): Request {
  return { ...(before ? { job: before.job } : {}), ...settings, ...sends, question: questionOf(said, before) };
}

/** What is sent: the words typed, or what stands behind a button of the last reply. */
function questionOf(said: Said, before: Reply | undefined): string {
  return 'types' in said ? said.types : (buttonsOf(before).get(said.presses) ?? said.presses);
}

/** The buttons under a reply, by their words: the choices of what it asks, and the questions it offers next. */
function buttonsOf(reply: Reply | undefined): ReadonlyMap<string, string> {
  const choices = reply?.clarify?.choices ?? [];
  return new Map([
    ...(reply?.next ?? []).map((text) => [text, text] as const),
    ...choices.map(({ text, send }) => [text, send] as const),
  ]);
}

async function overHttp(request: Request): Promise<unknown> {
  const answer = await app.request('/api/ask', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(request),
  });
  return answer.json();
}
