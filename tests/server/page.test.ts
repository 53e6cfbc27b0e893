import { describe, expect, test } from 'vitest';
import { hostile } from './fake.ts';
import { app, hiddenFields, submit, unescaped } from './fixtures.ts';

const tons = 'how many tons for 300 x 12 ft at 2 in';

const questionsOn = (html: string) =>
  [...html.matchAll(/<span class="away">You: <\/span>([^<]*)</g)].map(([, question]) => unescaped(question!));
const boxOf = (html: string) => unescaped(/<textarea id="question"[^>]*>([^<]*)</.exec(html)?.[1] ?? '');
const carried = (html: string) => Object.values(hiddenFields(html)).map((json) => JSON.parse(json));
const asked = async (fields: Record<string, string> | [string, string][]) => (await submit(fields)).text();

describe('the page', () => {
  test('is a whole document with one question box, and no script in it', async () => {
    const response = await app.request('/');
    const html = await response.text();
    expect(response.status).toBe(200);
    expect(response.headers.get('Content-Type')).toBe('text/html; charset=UTF-8');
    expect(html).toMatch(/^<!DOCTYPE html><html lang="en"[ >]/);
    expect(html.match(/name="question"/g)).toHaveLength(1);
    // Only files of our own, by address: nothing that a page could be made to run.
    for (const script of html.match(/<script[\s\S]*?<\/script>/g) ?? []) {
      expect(script).toMatch(/^<script (?:type="module" )?src="\/assets\/[a-z]+-[A-Z0-9]{8}\.js"><\/script>$/);
    }
    expect(html).not.toMatch(/<style| style=| on[a-z]+=/);
  });

  test('leads nowhere that is not there', async () => {
    const html = await asked({ question: tons });
    const addresses = [...html.matchAll(/ (?:href|src)="([^"#]+)"/g)].map(([, address]) => unescaped(address!));
    expect(addresses.length).toBeGreaterThan(2);
    for (const address of addresses) expect((await app.request(address)).status, address).toBe(200);
  });

  test('answers a link that holds a question', async () => {
    const response = await app.request(`/?q=${encodeURIComponent(tons)}&units=metric`);
    expect(response.status).toBe(200);
    const html = await response.text();
    expect(questionsOn(html)).toEqual([tons]);
    expect(html).toMatch(/<input[^>]*value="metric" checked/);
  });
});

describe('an answer', () => {
  test('shows the figure, what it rests on, the rules, the cautions and the checklist', async () => {
    const html = await asked({ question: tons });
    expect(html).toMatch(/<b class="number">44\.0<\/b><span class="unit"> tons<\/span>/);
    expect(html).toMatch(/From patch length 300 ft, patch width 12 ft/);
    expect(html).toMatch(/name="change" value="[^"]*">compacted weight 110 lb/);
    for (const outcome of ['Stop', 'Take care', 'Can&#39;t tell', 'Holds']) {
      expect(html).toContain(`<b class="outcome">${outcome}</b>`);
    }
    expect(html).toMatch(/posted limit is the whole truck/);
    expect(html).toMatch(/Nobody behind a backing truck/);
    expect(html.match(/type="checkbox"/g)).toHaveLength(3);
    expect(html).toMatch(/NAVEDTRA 14080/);
  });

  test('never folds a limit, an assumption or a caution away', async () => {
    const open = (await asked({ question: tons })).replace(/<details[\s\S]*?<\/details>/g, '');
    for (const text of [
      'over the 1 in a lift may be',
      'compacted weight 110 lb',
      'whole truck',
      'nothing here tells',
    ]) {
      expect(open).toContain(text);
    }
  });

  test('says each thing once outside the folds', async () => {
    const open = (await asked({ question: tons })).replace(/<details[\s\S]*?<\/details>/g, '');
    expect(open.match(/44\.0 tons \(|44\.0<\/b>/g)).toHaveLength(1);
    expect(open.match(/Stop: /g)).toBeNull();
    expect(open.match(/over the 1 in a lift may be/g)).toHaveLength(1);
  });

  test('asks back with the choices as buttons', async () => {
    const html = await asked({ question: 'tons for 150 x 12 ft' });
    expect(html.match(/How deep is the patch, on average\?/g)).toHaveLength(1);
    expect([...html.matchAll(/<button[^>]*name="send" value="([^"]*)"/g)].map(([, send]) => send)).toEqual([
      '1 in',
      '1 1/2 in',
      '2 in',
    ]);
  });

  test('of hostile text is text', async () => {
    const html = await asked({ question: 'everything', units: hostile, tick: hostile });
    expect(html.match(/alert\(1\)/g)!.length).toBeGreaterThan(20);
    expect(html).not.toMatch(/<script(?! (?:type="module" )?src="\/assets\/)|<img|<b>"|onmouseover="/);
    expect(boxOf(await asked({ question: hostile.padEnd(2001, '<') }))).toBe(hostile.padEnd(2001, '<'));
    const echoed = await asked({ question: hostile });
    expect(questionsOn(echoed)).toEqual([hostile]);
    expect(/<title>([^<]*)<\/title>/.exec(echoed)?.[1]).toContain('&lt;script&gt;');
  });
});

describe('a conversation on the page', () => {
  test('goes on: earlier questions and answers stay above, and the job goes along', async () => {
    const first = await asked({ question: tons });
    const second = await asked({ ...hiddenFields(first), question: 'can we lay a 2 in lift' });
    const third = await asked({ ...hiddenFields(second), question: 'tons for 150 x 12 ft' });
    expect(questionsOn(third)).toEqual([tons, 'can we lay a 2 in lift', 'tons for 150 x 12 ft']);
    expect(third).toMatch(/44\.0<\/b>/);
    expect(JSON.parse(hiddenFields(third).job!)).toMatchObject({ v: 1, turn: 3 });
    expect(third.match(/class="chip"/g), 'only the latest answer offers what to send').toHaveLength(3);
    expect(third.match(/id="latest"/g)).toHaveLength(1);
  });

  test('sends what a button says, and leaves what was typed in the box', async () => {
    const html = await asked({ question: 'half a thought', send: tons });
    expect(questionsOn(html)).toEqual([tons]);
    expect(boxOf(html)).toBe('half a thought');
  });

  test('puts a fact into the box to be changed, and loses nothing', async () => {
    const first = await asked({ question: tons });
    const changing = await asked({ ...hiddenFields(first), change: 'patch width 12 ft', question: '' });
    expect(questionsOn(changing)).toEqual([tons]);
    expect(boxOf(changing)).toBe('patch width 12 ft');
    expect(carried(changing)).toEqual(carried(first));
    expect(boxOf(await asked({ change: 'patch width 12 ft', question: 'and' }))).toBe('and, patch width 12 ft');
  });

  test('keeps the ticks of a checklist', async () => {
    const first = await asked({ question: tons });
    const next = await asked([
      ...Object.entries(hiddenFields(first)),
      ['tick', '1.0.1'],
      ['question', 'tons for 150 x 12 ft'],
    ]);
    expect(next.match(/value="1\.0\.\d" checked/g)).toEqual(['value="1.0.1" checked']);
  });

  test('keeps the units that were picked', async () => {
    const html = await asked({ question: tons, units: 'metric' });
    expect(JSON.parse(hiddenFields(html).job!).units).toBe('metric');
    expect(html).toMatch(/<input[^>]*value="metric" checked/);
    const next = await asked({ ...hiddenFields(html), question: 'who won the game' });
    expect(JSON.parse(hiddenFields(next).talk!).turns).toEqual([
      { question: tons, units: 'metric' },
      { question: 'who won the game' },
    ]);
  });

  test('that grows long lets its oldest questions go, says so, and keeps the job', async () => {
    let html = await asked({ question: tons });
    for (let turn = 2; turn <= 23; turn++) html = await asked({ ...hiddenFields(html), question: `question ${turn}` });
    expect(questionsOn(html)).toHaveLength(21);
    expect(questionsOn(html).at(-1)).toBe('question 23');
    expect(html).toMatch(/The first 3 questions have left this page/);
    const { job, talk } = hiddenFields(html);
    expect(JSON.parse(job!)).toMatchObject({ turn: 23 });
    expect(JSON.parse(job!).facts).toHaveLength(3);
    expect(JSON.parse(talk!)).toMatchObject({ first: 4, start: { turn: 3 } });
    expect(html).toMatch(/id="question-23"/);
  });

  test.each([
    '{',
    '7',
    '{"first":1}',
    JSON.stringify({ first: 1, version: 'v', turns: [{ question: 'x'.repeat(2001) }] }),
  ])('with damaged earlier questions goes on from the job: %s', async (talk) => {
    const { job } = hiddenFields(await asked({ question: tons }));
    const html = await asked({ job: job!, talk, question: 'who won the game' });
    expect(questionsOn(html)).toEqual(['who won the game']);
    expect(html).toMatch(/earlier questions on this page could not be read/);
    expect(JSON.parse(hiddenFields(html).job!)).toMatchObject({ turn: 2 });
    const next = await asked({ ...hiddenFields(html), question: 'and then' });
    expect(JSON.parse(hiddenFields(next).job!), 'answered again from the same job').toMatchObject({ turn: 3 });
  });

  test('says when the rules changed since', async () => {
    const fields = hiddenFields(await asked({ question: tons }));
    const talk = fields.talk!.replace('test0001', 'test0000');
    expect(await asked({ ...fields, talk, question: tons })).toMatch(/The rules changed since your last question/);
    expect(await asked({ ...fields, question: tons })).not.toMatch(/The rules changed/);
  });
});

describe('what cannot be asked', () => {
  test.each([
    ['', /Type a question, for example/],
    ['   ', /Type a question, for example/],
    ['x'.repeat(2001), /over 2,000 characters\. Ask one thing at a time/],
  ])('stays in the box with the reason beside it (%#)', async (question, reason) => {
    const first = await asked({ question: tons });
    const response = await submit({ ...hiddenFields(first), question });
    const html = await response.text();
    expect(response.status).toBe(422);
    expect(/<p class="error" id="error">([^<]*)</.exec(html)?.[1]).toMatch(reason);
    expect(html).toMatch(/<title>Error: /);
    expect(html).toMatch(/aria-describedby="error hint" aria-invalid="true"/);
    expect(boxOf(html)).toBe(question);
    expect(questionsOn(html)).toEqual([tons]);
  });

  test('a form in another format, or too large, is refused with a page', async () => {
    const json = await app.request('/', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: '{}',
    });
    expect([json.status, await json.text()]).toEqual([
      415,
      expect.stringMatching(/application\/x-www-form-urlencoded/),
    ]);
    const large = await submit({ question: 'x'.repeat(128 * 1024) });
    expect([large.status, await large.text()]).toEqual([413, expect.stringMatching(/128 KiB/)]);
  });

  test('a form as multipart is read as well', async () => {
    const body = new FormData();
    body.set('question', tons);
    expect(questionsOn(await (await app.request('/', { method: 'POST', body })).text())).toEqual([tons]);
  });

  test('a file in place of a question is no question', async () => {
    const body = new FormData();
    body.set('question', new File(['x'], 'x.txt'));
    expect((await app.request('/', { method: 'POST', body })).status).toBe(422);
  });

  test('a form that breaks off is refused, not a fault of ours', async () => {
    const headers = { 'Content-Type': 'multipart/form-data; boundary=x' };
    const response = await app.request('/', {
      method: 'POST',
      headers,
      body: '--x\r\nContent-Disposition: form-data; na',
    });
    expect(response.status).toBe(400);
  });
});
