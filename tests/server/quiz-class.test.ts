import { describe, expect, test } from 'vitest';
import { readWho, resultsAsCsv } from '../../src/ask/quiz/class-results.ts';
import { openClass } from '../../src/server/quiz-class/class.ts';
import { rightAnswer } from '../quiz/sets.ts';
import { appOnStore } from './app-on-store.ts';
import { fakeAsk } from './fake.ts';
import { hiddenFields, unescaped, app as without } from './fixtures.ts';

const { app, store } = appOnStore(fakeAsk);
const body = (fields: Record<string, string>) => ({ method: 'POST', body: new URLSearchParams(fields) });
const set = { seat: 'roller', count: '6', seed: 'monday' };

async function started(): Promise<{ trainer: string; crew: string }> {
  const answer = await app.request('/quiz/class', body(set));
  expect(answer.status).toBe(303);
  const trainer = answer.headers.get('Location')!;
  const [, crew] = /<a href="http:\/\/localhost(\/quiz\/class\/[^"]+)"/.exec(
    await (await app.request(trainer)).text(),
  )!;
  return { trainer, crew: crew! };
}

/** Answers the set of a class; `wrong`: how many are left out. */
async function answer(crew: string, who: string, wrong = 0, sheet?: string) {
  const page = await (await app.request(crew)).text();
  const found = (await openClass(store(), crew.split('/').at(-1)!))!;
  const form = new URLSearchParams({ ...hiddenFields(page), who, ...(sheet ? { sheet } : {}) });
  for (const item of found.set.items.slice(wrong))
    rightAnswer(item).forEach((value, at) => {
      form.append(item.kind === 'order' ? `answer-${item.id}-${at + 1}` : `answer-${item.id}`, value);
    });
  const sent = await app.request(crew, { method: 'POST', body: form });
  return { status: sent.status, text: await sent.text(), sheet: form.get('sheet')! };
}

describe('a class', () => {
  test('is started on purpose: asking for the page keeps nothing', async () => {
    const { length } = await store().logs('class', '', 100);
    const page = await app.request(`/quiz/class?${new URLSearchParams(set)}`);
    expect(await page.text()).toContain('Start the class');
    expect(await store().logs('class', '', 100)).toHaveLength(length);
  });

  test('the crew answers with initials or a number; the trainer sees who, how many and which', async () => {
    const { trainer, crew } = await started();
    expect((await answer(crew, 'jm')).text).toContain('6 of 6 right');
    expect((await answer(crew, '17', 2)).text).toContain('4 of 6 right');
    const page = unescaped(await (await app.request(trainer)).text());
    expect(page).toContain('2 results');
    expect(page).toMatch(/<th scope="row">JM<\/th>.*6 of 6.*<th scope="row">17<\/th>.*4 of 6/s);
    expect(page).toContain('1 of 2');
  });

  test('a sheet that is sent twice counts once', async () => {
    const { trainer, crew } = await started();
    const { sheet } = await answer(crew, 'AB');
    await answer(crew, 'AB', 0, sheet);
    expect(await (await app.request(trainer)).text()).toContain('1 result<');
  });

  test('nothing but initials or a number is kept', async () => {
    const { crew } = await started();
    const { status, text } = await answer(crew, 'John Miller');
    expect(status).toBe(422);
    expect(text).toContain('and no name');
    const { log } = (await openClass(store(), crew.split('/').at(-1)!))!;
    expect(await store().length(log)).toBe(1);
    await answer(crew, 'J.M.');
    const [kept] = await store().read(log, 1, 5);
    expect(Object.keys(kept!.body as object).sort()).toEqual(['kind', 'marks', 'who']);
    expect(JSON.stringify(kept!.body)).toBe(
      JSON.stringify({ kind: 'result', who: 'JM', marks: Array(6).fill('right') }),
    );
  });

  test('the results are exported and read again', async () => {
    const { trainer, crew } = await started();
    await answer(crew, 'AB', 1);
    const csv = await app.request(`${trainer}/file?format=csv`);
    expect(csv.headers.get('Content-Disposition')).toContain('class-results.csv');
    const [head, row] = (await csv.text())
      .trim()
      .split('\r\n')
      .map((line) => line.split(','));
    expect(head!.slice(0, 5)).toEqual(['who', 'day', 'right', 'of', 'musts_met']);
    expect(row!.slice(2, 4)).toEqual(['5', '6']);
    expect(row!.slice(5, 11)).toEqual(['open', 'right', 'right', 'right', 'right', 'right']);
    const json = JSON.parse(await (await app.request(`${trainer}/file?format=json`)).text());
    expect(json.results).toHaveLength(1);
    expect(json.set.items).toHaveLength(6);
  });

  test('is erased with all its addresses', async () => {
    const { trainer, crew } = await started();
    await answer(crew, 'AB');
    const { log } = (await openClass(store(), crew.split('/').at(-1)!))!;
    expect((await app.request(`${trainer}/erase`, { method: 'POST' })).status).toBe(200);
    for (const path of [trainer, crew]) expect((await app.request(path)).status).toBe(404);
    expect(await store().length(log)).toBe(0);
  });

  test('the crew cannot see results, export or erase; a key that is none opens nothing', async () => {
    const { crew } = await started();
    expect((await app.request(`${crew}/file`)).status).toBe(404);
    expect((await app.request(`${crew}/erase`, { method: 'POST' })).status).toBe(404);
    expect(await (await app.request(crew)).text()).not.toContain('Erase');
    for (const key of ['x', 'A'.repeat(22), '..%2f', 'A'.repeat(5000)])
      expect((await app.request(`/quiz/class/${key}`)).status).toBe(404);
  });

  test('the set stays as it was given out', async () => {
    const { trainer, crew } = await started();
    const [a, b] = await Promise.all([trainer, crew].map((path) => openClass(store(), path.split('/').at(-1)!)));
    expect(a!.set).toEqual(b!.set);
    expect(a!.set.items).toHaveLength(6);
  });

  test('a server without a store says so', async () => {
    const sent = await without.request('/quiz/class', body(set));
    expect(sent.status).toBe(503);
    expect(await sent.text()).toContain('started without a store');
  });

  test('a set that cannot be had starts no class', async () => {
    expect((await app.request('/quiz/class', body({ count: '0' }))).status).toBe(422);
  });
});

test.each([
  ['jm', 'JM'],
  ['J.M.', 'JM'],
  [' 7 ', '7'],
  ['Ñ', 'Ñ'],
  ['123456', '123456'],
  ['1234567', undefined],
  ['JOHN', undefined],
  ['J1', undefined],
  ['', undefined],
  ['=1', undefined],
])('%j is kept as %j', (typed, kept) => expect(readWho(typed)).toBe(kept));

test('an empty class exports its head', async () => {
  const { trainer } = await started();
  const found = (await openClass(store(), trainer.split('/').at(-1)!))!;
  expect(resultsAsCsv(found.set, [])).toMatch(/^who,day,right,of,musts_met,q1,.*\r\n$/);
});
