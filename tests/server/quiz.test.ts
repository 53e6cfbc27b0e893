import { describe, expect, test } from 'vitest';
import { buildQuiz } from '../../src/ask/quiz/build.ts';
import { readCall, screens } from '../../src/ask/quiz/desk/call.ts';
import { readKept } from '../../src/ask/quiz/desk/kept.ts';
import type { QuizItem } from '../../src/ask/reply.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { rightAnswer } from '../quiz/sets.ts';
import { app, hiddenFields, unescaped } from './fixtures.ts';

const html = async (path: string): Promise<{ status: number; text: string }> => {
  const answer = await app.request(path);
  return { status: answer.status, text: await answer.text() };
};
const query = 'topic=mix&topic=rolling&level=easy&count=8&seed=winter';
const itemsAt = (address: string): readonly QuizItem[] => {
  const built = buildQuiz(knowledge, readCall(new URLSearchParams(address)).request);
  if ('fault' in built) throw new Error(built.fault);
  return built.set.items;
};

/** A form with the answers to these items. */
function answersTo(items: readonly QuizItem[], address: string, more: Record<string, string>): URLSearchParams {
  const form = new URLSearchParams(address);
  for (const item of items)
    rightAnswer(item).forEach((value, at) => {
      form.append(item.kind === 'order' ? `answer-${item.id}-${at + 1}` : `answer-${item.id}`, value);
    });
  for (const [name, value] of Object.entries(more)) form.set(name, value);
  return form;
}
const send = async (path: string, body: URLSearchParams | FormData): Promise<{ status: number; text: string }> => {
  const answer = await app.request(path, { method: 'POST', body });
  return { status: answer.status, text: await answer.text() };
};

describe('the desk', () => {
  test('is a form; with a set asked for it shows every question with its key, and a swap for each', async () => {
    const empty = await html('/quiz');
    expect(empty.status).toBe(200);
    expect(empty.text).toContain('Make the set');
    const { status, text } = await html(`/quiz?${query}`);
    expect(status).toBe(200);
    for (const { stem, why } of itemsAt(query)) {
      expect(unescaped(text)).toContain(stem);
      expect(unescaped(text)).toContain(why);
    }
    expect(text.match(/&amp;swap=[0-9a-f]{8}#item-/g)).toHaveLength(8);
  });

  test('a swap by its link changes that question and keeps the rest', async () => {
    const { text } = await html(`/quiz?${query}`);
    const [, link] = /href="([^"]*swap=[0-9a-f]{8})#item-3"/.exec(text)!;
    const address = unescaped(link!).split('?')[1]!;
    const [before, after] = [itemsAt(query), itemsAt(address)].map((items) => items.map(({ stem }) => stem));
    expect(after!.filter((stem, at) => stem !== before![at])).toHaveLength(1);
    expect(after![2]).not.toBe(before![2]);
  });

  test.each([
    ['count=0', /Ask for 1 to 100 questions/],
    ['count=abc', /Ask for 1 to 100 questions/],
    ['count=', /Ask for 1 to 100 questions|questions/],
    ['count=90&topic=weather', /are too many: \d+ different questions can be had on weather/],
    ['count=5&topic=cooking', /There are no questions on "cooking"/],
    ['count=5&seat=cook', /"cook" is no seat/],
    ['count=5&level=mad', /"mad" is no level/],
    ['count=5&kind=essay', /"essay" is no kind/],
    ['count=5&about=fault/nothing', /There is no question on "fault\/nothing"/],
    ['count=2&seat=flagger', /has 4 questions that must be right/],
  ])('%s is told over the form, which keeps what was asked', async (asked, said) => {
    const { status, text } = await html(`/quiz?${asked}`);
    expect(unescaped(text)).toMatch(said);
    if (asked !== 'count=') expect(status).toBe(422);
    for (const screen of [screens.sheet, screens.key, screens.take, screens.tailgate, screens.classes]) {
      if (asked === 'count=') continue;
      expect((await html(`${screen}?${asked}`)).status).toBe(422);
    }
  });

  test('what is asked is never markup', async () => {
    const { text } = await html(
      `/quiz?count=5&topic=${encodeURIComponent('<b>x</b>')}&seed=${encodeURIComponent('"><i>')}`,
    );
    expect(text).not.toContain('<b>x</b>');
    expect(text).not.toContain('"><i>');
  });
});

describe('on paper', () => {
  test('the student sheet gives no key away, the key has why, source and version', async () => {
    const [sheet, key] = await Promise.all([html(`/quiz/sheet?${query}`), html(`/quiz/key?${query}`)]);
    for (const { why, source, stem } of itemsAt(query)) {
      expect(unescaped(sheet.text)).toContain(stem);
      expect(unescaped(sheet.text)).not.toContain(why);
      expect(unescaped(key.text)).toContain(why);
      expect(unescaped(key.text)).toContain(source);
    }
    for (const { text } of [sheet, key]) expect(text).toContain(`rules ${knowledge.version}`);
  });

  test('every seat has its practical sheet, with its safety rules', async () => {
    for (const seat of ['new-hand', 'flagger', 'raker', 'roller', 'tack', 'truck', 'blade', 'foreman']) {
      const { status, text } = await html(`/quiz/sign-off?seat=${seat}`);
      expect(status).toBe(200);
      expect(text.match(/class="box"/g)!.length).toBeGreaterThan(7);
      expect(text).not.toMatch(/[[\]{}]|undefined/);
    }
    expect((await html('/quiz/sign-off?seat=roller')).text).toContain('firm and level');
    expect((await html('/quiz/sign-off?seat=cook')).status).toBe(422);
  });

  test('hazard drawings are drawn, and told in words', async () => {
    const { text } = await html('/quiz/sheet?topic=hazards&count=6&seed=a');
    expect(text.match(/<svg [^>]*role="img" aria-label="Drawing of a work zone/g)).toHaveLength(6);
  });
});

describe('taking a set', () => {
  const items = itemsAt(query);

  test('all at the end: marked, by topic, with the why', async () => {
    const { text } = await send('/quiz/take', answersTo(items, query, { do: 'mark' }));
    expect(text).toContain('8 of 8 right');
    const wrong = answersTo(items, query, { do: 'mark' });
    for (const name of [...wrong.keys()].filter((key) => key.startsWith(`answer-${items[0]!.id}`))) wrong.delete(name);
    const { text: again } = await send('/quiz/take', wrong);
    expect(again).toContain('7 of 8 right');
    expect(again).toContain('Left out');
  });

  test('one by one: checked, told why, the next; the answers travel along to the result', async () => {
    const address = `${query}&feedback=each`;
    let { text } = await html(`/quiz/take?${address}`);
    for (const [at, item] of items.entries()) {
      expect(text).toContain(`Question ${at + 1} of 8`);
      const form = new URLSearchParams(hiddenPairs(text));
      rightAnswer(item).forEach((value, place) => {
        form.append(item.kind === 'order' ? `answer-${item.id}-${place + 1}` : `answer-${item.id}`, value);
      });
      form.set('do', 'check');
      const told = (await send('/quiz/take', form)).text;
      expect(told).toContain('class="mark-right"');
      expect(unescaped(told)).toContain(item.why);
      const onward = new URLSearchParams(hiddenPairs(told));
      onward.set('do', at === 7 ? 'mark' : 'next');
      text = (await send('/quiz/take', onward)).text;
    }
    expect(text).toContain('8 of 8 right');
  });

  test('a set that holds a must is failed on it, whatever the score', async () => {
    const address = 'seat=flagger&count=10&seed=a';
    const own = itemsAt(address);
    const must = own.find(({ mustPass }) => mustPass)!;
    const form = answersTo(own, address, { do: 'mark' });
    form.delete(`answer-${must.id}`);
    const { text } = await send('/quiz/take', form);
    expect(text).toContain('9 of 10 right');
    expect(text).toContain('Not passed, whatever the score');
  });
});

/** Hidden fields as pairs: a name may stand several times. */
const hiddenPairs = (text: string): [string, string][] =>
  [...text.matchAll(/<input type="hidden" name="([^"]*)" value="([^"]*)"/g)].map(([, name, value]) => [
    unescaped(name!),
    unescaped(value!),
  ]);

describe('files', () => {
  test.each([
    ['json', 'application/json; charset=utf-8', '.json'],
    ['csv', 'text/csv; charset=utf-8', '.csv'],
    ['spreadsheet', 'text/csv; charset=utf-8', '.csv'],
    ['qti3', 'application/zip', '.zip'],
    ['text', 'text/plain; charset=utf-8', '.txt'],
  ])('%s comes as a file', async (format, type, ending) => {
    const answer = await app.request(`/quiz/file?${query}&format=${format}`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('Content-Type')).toBe(type);
    expect(answer.headers.get('Content-Disposition')).toMatch(
      new RegExp(`^attachment; filename="quiz-[a-z0-9-]+\\${ending}"$`),
    );
    expect((await answer.arrayBuffer()).byteLength).toBeGreaterThan(1000);
  });

  test('a format that is none, or a set that cannot be had, is told', async () => {
    expect((await html(`/quiz/file?${query}&format=pdf`)).status).toBe(422);
    expect((await html('/quiz/file?count=0&format=csv')).status).toBe(422);
  });

  test('a saved set is opened again, and its key holds', async () => {
    const text = await (await app.request(`/quiz/file?${query}&format=json`)).text();
    const set = readKept(text)!;
    const form = new FormData();
    form.set('set', new File([text], 'set.json'));
    const kept = await send('/quiz/kept', form);
    expect(kept.status).toBe(200);
    expect(kept.text).toContain('No rule behind this key has changed');
    const older = new FormData();
    const changed = {
      ...set,
      rules: { version: 'older' },
      items: set.items.map((item, at) => (at === 2 ? { ...item, why: 'Once it was so.' } : item)),
    };
    older.set('set', new File([JSON.stringify(changed)], 'set.json'));
    const told = await send('/quiz/kept', older);
    expect(told.text).toContain('made by rules older');
    expect(told.text).toContain('The rules now say otherwise on question 3');
    const nothing = new FormData();
    nothing.set('set', new File(['{'], 'x.json'));
    expect((await send('/quiz/kept', nothing)).status).toBe(422);
    expect((await send('/quiz/kept', new FormData())).status).toBe(422);
  });
});

test('hidden fields carry the whole call', async () => {
  const { text } = await html(`/quiz/take?${query}`);
  expect(hiddenFields(text)).toMatchObject({ level: 'easy', count: '8', seed: 'winter' });
});
