import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import type { Store } from '../../src/server/store/store.ts';
import { overBothEngines, type Place } from './engines.ts';

const list = [
  'Sta;End;Side;Width ft;Depth in;Distress;Remarks',
  '12+50;15+50;RT;12;2;alligator cracking;soft edge',
  '18+00;19+50;LT;10;1,5;rutting;',
  '40+00;40+60;RT;8;3;pothole;=see photo 7',
].join('\n');

overBothEngines((_engine, place) => {
  let here: Place;
  let store: Store;
  let app: ReturnType<typeof createApp>;
  beforeEach(async () => {
    here = await place();
    store = await here.open();
    app = createApp({ ask, store: async () => store });
  });
  afterEach(async () => {
    await store.close();
    await here.clear();
  });

  const post = (address: string, fields: Record<string, string>) =>
    app.request(address, {
      method: 'POST',
      body: new URLSearchParams(fields),
      headers: { 'Content-Type': 'application/x-www-form-urlencoded' },
    });
  const page = async (address: string): Promise<string> => (await app.request(address)).text();
  /** The hidden fields of the form that does something, as they stand on a page. */
  const form = (html: string, act: string, line = ''): Record<string, string> => {
    const found = html
      .split('<form')
      .slice(1)
      .map((text) => text.slice(0, text.indexOf('</form>')))
      .find((text) => text.includes(`name="do" value="${act}"`) && (line === '' || text.includes(`value="${line}"`)));
    if (!found) throw new Error(`no form for ${act} ${line}`);
    const fields: Record<string, string> = {};
    for (const [, name, value] of found.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/g))
      fields[name!] = value!;
    return fields;
  };
  const lineOf = (html: string, label: string): string =>
    new RegExp(`<option value="(patch/[^"]+)">${label}</option>`).exec(html)![1]!;
  const start = async (): Promise<string> => {
    const answer = await post('/job', { name: 'Spring list', road: 'CR 9', text: list });
    expect(answer.status).toBe(200);
    expect(await answer.text()).toContain('3 patches put on the job.');
    return answer.headers.get('Content-Location')!;
  };

  test('a job goes from a pasted patrol list through order and laying to its record', async () => {
    const job = await start();
    // 300×12×2, 150×10×1.5 and 60×8×3 at 110 lb/yd2/in: 44, 13.75 and 8.8 tons, by hand.
    let html = await page(job);
    expect(html).toContain('66.6 tons in place');
    expect(html).toContain('=see photo 7');
    await post(job, { ...form(html, 'tell'), text: 'mix is $85 a ton and trucks carry 12 tons' });
    html = await page(job);
    expect(html).toMatch(/Cost of the mix ordered: \$/);
    await post(job, {
      ...form(html, 'load'),
      day: '2026-05-04',
      time: '08:10',
      patch: lineOf(html, '1'),
      'placed-mass': '45 tons',
      'placed-length': '140 ft',
      ticket: '77',
    });
    html = await page(job);
    expect(html).toContain('It is going down too thick');
    await post(job, { ...form(html, 'hours'), day: '2026-05-04', who: 'j.d.', 'work-hours': '9' });
    await post(job, form(await page(job), 'done', lineOf(html, '1')));
    const record = await page(`${job}/day/2026-05-04`);
    for (const text of [
      '45.0 tons',
      '08:10',
      'JD: 9.0 hours',
      'Patch 1: 45.0 tons today',
      '2 patches, 22.6 tons to lay',
    ])
      expect(record).toContain(text);
    expect(await page(`${job}/season`)).toMatch(/CR 9[\s\S]*45\.0 tons/);
    const csv = await page(`${job}/export.csv`);
    const json = await page(`${job}/export.json`);
    for (const saved of [csv, json]) {
      const copy = (await post('/job', { text: saved })).headers.get('Content-Location')!;
      expect(await page(`${copy}/export.csv`)).toBe(csv);
    }
  });

  test('what is said on the page is written down once, said back, and taken back; nothing is written of a question', async () => {
    const job = await start();
    const say = async (text: string, more: Record<string, string> = {}): Promise<string> => {
      const answer = await post(job, { ...form(await page(job), 'tell'), text, ...more });
      return answer.text();
    };
    const fields = { ...form(await page(job), 'tell'), text: 'we laid 42 tons on patch 1' };
    let html = '';
    // Wet glass sends twice: the second time says the same, and nothing more is written.
    for (let sent = 0; sent < 2; sent++) {
      html = await (await post(job, fields)).text();
      expect(html).toContain('Patch 1: 42.0 tons laid, 42.0 tons down in all.');
    }
    expect(await page(job)).toContain('Down so far: 42.0 tons.');
    expect(await say("what's left")).toContain('3 patches (1, 2, 3), 24.6 tons to lay');
    expect(await say('how many tons for patch 2')).toContain('13.8 tons');
    expect(await say('we laid 42 tons on patch 9')).toContain('There is no patch 9 on the job. I have 1, 2, 3.');
    const undo = /name="change" value="([^"]+)"/.exec(html)![1]!;
    expect(await say('undo', { change: undo })).toContain('Taken back');
    expect(await page(job)).not.toContain('Down so far');
    expect(await say('mix is $85 a ton for the job')).not.toContain('The job: 3 patches');
    expect(await page(job)).toContain('85');
    const once = { ...form(await page(job), 'tell'), text: 'done with patches 2 and 3' };
    for (let sent = 0; sent < 2; sent++) await post(job, once);
    expect(await page(job)).toContain('Left: 1 patch,');
    // A list sent twice is taken once.
    const list = {
      ...form(await page(job), 'import'),
      text: 'station,length ft,width ft,depth in\n50+00,90,10,2\n60+00,90,10,2',
    };
    for (let sent = 0; sent < 2; sent++) await post(job, list);
    expect((await page(job)).match(/<option value="patch\/[^"]+">\d+<\/option>/g)!.length % 5).toBe(0);
    expect(await page(job)).toContain('Left: 3 patches,');
  });

  test('a schedule of rates is sent as a file; one with a fault is refused with its line, and nothing of it is taken', async () => {
    const job = await start();
    const text = readFileSync('docs/examples/fema-rates-2025.json', 'utf8');
    const send = async (file: string): Promise<string> => {
      const body = new FormData();
      for (const [name, value] of Object.entries(form(await page(job), 'rates'))) body.set(name, value);
      body.set('text', '');
      body.set('file', new File([file], 'rates.json', { type: 'application/json' }));
      return (await app.request(job, { method: 'POST', body })).text();
    };
    const line = text.split('\n').findIndex((row) => row.includes('"8332"')) + 1;
    expect(await send(text.replace('"code": "8332"', '"cod": "8332"'))).toMatch(
      new RegExp(`The rates were not taken\\. Line ${line}, at rates\\[1\\]`),
    );
    expect(await page(job)).not.toContain('Rates of 2025');
    expect(await send(text)).toContain('Rates of 2025 from FEMA Schedule of Equipment Rates hold for this job now');
    const machines = 'grader 8331 and 2 dump trucks 8722';
    await post(job, {
      ...form(await page(job), 'job'),
      machines,
      'has-machines': '1',
      name: 'Spring list',
      road: 'CR 9',
    });
    await post(job, { ...form(await page(job), 'tell'), text: '8 hours' });
    const html = await page(job);
    // 131.96 + 2 × 120.74 an hour.
    for (const said of ['code 8331, $131.96/h', '2 × dump truck', 'Rates of 2025 from FEMA'])
      expect(html).toContain(said);
    const copy = (await post('/job', { text: await page(`${job}/export.csv`) })).headers.get('Content-Location')!;
    expect(await page(copy)).toContain('code 8331, $131.96/h');
  });

  test('two who edit what the other has not seen are both told, and either can settle it', async () => {
    const job = await start();
    const seen = await page(job);
    const edit = { ...form(seen, 'patch', lineOf(seen, '2')), 'has-lane': '1' };
    await post(job, { ...edit, by: 'AB', lane: 'left', once: '' });
    await post(job, { ...edit, by: 'CD', lane: 'both', once: '' });
    const html = await page(job);
    expect(html).toContain('Two people set this without seeing each other');
    expect(html).toContain('both (CD)');
    expect(html).toContain('left (AB)');
    await post(job, form(html, 'settle'));
    expect(await page(job)).not.toContain('Two people set this');
  });

  test('a form sent twice counts once; sent again with something else it is another line', async () => {
    const job = await start();
    const fields = { ...form(await page(job), 'load'), day: '2026-05-04', 'placed-mass': '12 tons' };
    for (const mass of ['12 tons', '12 tons', '13 tons']) await post(job, { ...fields, 'placed-mass': mass });
    expect(await page(job)).toContain('Down so far: 25.0 tons.');
  });

  test('links: a role does what it may, a revoked one opens nothing and loses nothing', async () => {
    const job = await start();
    const make = async (role: string) =>
      /href="http:\/\/localhost(\/job\/[^"]+)"/.exec(await (await post(`${job}/links`, { role })).text())![1]!;
    const [look, record] = [await make('look'), await make('record')];
    expect(await page(look)).not.toContain('name="do"');
    expect((await post(look, { do: 'load', 'placed-mass': '3 tons' })).status).toBe(422);
    expect((await post(record, { do: 'patch', size: '10 x 10 ft at 1 in' })).status).toBe(422);
    expect((await post(record, { do: 'load', day: '2026-05-04', 'placed-mass': '3 tons' })).status).toBe(303);
    expect((await post(`${record}/links`, { role: 'edit' })).status).toBe(403);
    const html = await page(`${job}/links`);
    const links = [...html.matchAll(/name="revoke" value="([^"]+)"/g)].map(([, id]) => id!);
    // The link that one is here by cannot be taken back here.
    expect(links).toHaveLength(2);
    for (const id of links) expect((await post(`${job}/links`, { revoke: id })).status).toBe(303);
    expect([
      (await app.request(look)).status,
      (await app.request(record)).status,
      (await app.request(job)).status,
    ]).toEqual([410, 410, 200]);
    expect(await page(job)).toContain('Down so far: 3.0 tons.');
  });

  test('every way to a job asks for its key and its role', async () => {
    const job = await start();
    const make = async (role: string) =>
      /href="http:\/\/localhost(\/job\/[^"]+)"/.exec(await (await post(`${job}/links`, { role })).text())![1]!;
    const [look, record, gone] = [await make('look'), await make('record'), await make('edit')];
    const change = (id: string, line: string, set: object) => ({ id: `0mabcdefg.000${id}.phone1`, line, set });
    const sync = async (address: string, changes: readonly unknown[], more = {}) =>
      (
        await app.request(`/api${address.replace('/job', '/jobs')}/sync`, {
          method: 'POST',
          body: JSON.stringify({ changes, after: 0, ...more }),
          headers: { 'Content-Type': 'application/json' },
        })
      ).status;
    const load = (id: string) => change(id, `load/x${id}`, { 'placed-mass': { number: 9, unit: 'ton' } });
    const name = (id: string) => change(id, 'job', { name: 'Mine now' });
    expect([await sync(look, []), await sync(look, [load('1')]), await sync(look, [name('2')])]).toEqual([
      200, 403, 403,
    ]);
    expect([await sync(record, [load('3')]), await sync(record, [name('4')])]).toEqual([200, 403]);
    // One that may not be made refuses those that it came with.
    expect(await sync(record, [load('5'), name('6')])).toBe(403);
    expect(await page(job)).toContain('Down so far: 9.0 tons.');
    expect(await page(job)).not.toContain('Mine now');
    // A log of changes whose id is taken is not changed by a lesser role that sends it again.
    expect(await sync(record, [{ ...load('3'), set: { 'placed-mass': { number: 1, unit: 'ton' } } }])).toBe(422);
    const saved = JSON.stringify({ jobBook: 1, changes: [name('9')] });
    for (const text of [saved, list]) expect((await post(record, { do: 'import', text })).status).toBe(422);
    for (const address of [look, record]) {
      expect((await app.request(`${address}/links`)).status).toBe(403);
      expect((await post(`${address}/links`, { role: 'edit' })).status).toBe(403);
      for (const made of [job, look, record, gone])
        expect(await page(address)).not.toContain(`${made.split('/')[2]}/x`);
    }
    // A talk is carried only where the link edits.
    const talk = JSON.stringify({
      v: 1,
      turn: 1,
      facts: [],
      book: { patches: [{ label: '1', facts: [{ quantity: 'patch-length', turn: 1, number: 30, unit: 'ft' }] }] },
    });
    expect((await post('/job', { talk, link: `http://localhost${record}` })).status).toBe(422);
    expect((await post('/job', { talk, link: `http://localhost${gone}` })).headers.get('Location')).toBe(gone);
    expect(await page(job)).toContain('<b>Patch 4</b>');

    const id = /name="revoke" value="([^"]+)"/g;
    const last = [...(await page(`${job}/links`)).matchAll(id)].at(-1)![1]!;
    for (const each of [...(await page(`${job}/links`)).matchAll(id)]) await post(`${job}/links`, { revoke: each[1]! });
    expect(last).toBeTruthy();
    const pages = ['', '/links', '/day/2026-05-04', '/season', '/export.csv', '/export.json'];
    for (const address of [look, record, gone]) {
      for (const each of pages) expect([each, (await app.request(address + each)).status]).toEqual([each, 410]);
      expect(await sync(address, [load('7')])).toBe(410);
      // Nor does beginning it again open it.
      expect(await sync(address, [load('8')], { begin: true })).toBe(410);
      expect((await post(address, { do: 'load', 'placed-mass': '3 tons' })).status).toBe(410);
      expect((await post('/job', { talk, link: address })).status).toBe(422);
    }
    // Nobody's key opens nothing, and a key of another kind is no key of a job.
    const stranger = `/job/${'A'.repeat(22)}`;
    for (const each of pages) expect((await app.request(stranger + each)).status).toBe(404);
    expect(await sync(stranger, [])).toBe(404);
    // Answers about a job are kept by nobody on the way.
    expect((await app.request(job)).headers.get('Cache-Control')).toContain('private');
    expect((await app.request(job)).headers.get('Referrer-Policy')).toBe('no-referrer');
  });

  test('a job begun without signal is started under the key its phone made, once', async () => {
    const key = 'Zz0-_'.padEnd(22, 'k');
    const sync = async (body: object) => {
      const answer = await app.request(`/api/jobs/${key}/sync`, {
        method: 'POST',
        body: JSON.stringify(body),
        headers: { 'Content-Type': 'application/json' },
      });
      return { status: answer.status, body: (await answer.json()) as { role: string; length: number } };
    };
    expect((await sync({ changes: [], after: 0 })).status).toBe(404);
    const change = { id: '0mabcdefg.0000.phone1', line: 'job', set: { name: 'Hill' } };
    const both = await Promise.all([1, 2].map(() => sync({ changes: [change], after: 0, begin: true })));
    for (const each of both) expect(each).toMatchObject({ status: 200, body: { role: 'edit', length: 1 } });
    expect(await page(`/job/${key}`)).toContain('Hill');
    // A name that is no key begins nothing.
    const odd = await app.request('/api/jobs/short/sync', {
      method: 'POST',
      body: JSON.stringify({ changes: [], after: 0, begin: true }),
      headers: { 'Content-Type': 'application/json' },
    });
    expect(odd.status).toBe(404);
  });

  test('phones sync: what is sent is there, what others did comes back, twice does no harm, and nonsense is refused whole', async () => {
    const job = await start();
    const key = job.split('/').at(-1)!;
    const sync = async (body: unknown) => {
      const answer = await app.request(`/api/jobs/${key}/sync`, {
        method: 'POST',
        body: JSON.stringify(body),
        headers: { 'Content-Type': 'application/json' },
      });
      return { status: answer.status, body: (await answer.json()) as { length: number; changes: unknown[] } };
    };
    const change = { id: '0mabcdefg.0000.phone1', line: 'load/x1', set: { 'placed-mass': { number: 9, unit: 'ton' } } };
    const first = await sync({ changes: [change], after: 0 });
    expect(first.status).toBe(200);
    expect(first.body.changes.at(-1)).toEqual(change);
    expect((await sync({ changes: [change], after: first.body.length })).body).toMatchObject({
      length: first.body.length,
      changes: [],
    });
    expect((await sync({ changes: [{ ...change, set: { note: 'other' } }], after: 0 })).status).toBe(422);
    const bad = { ...change, id: '0mabcdefh.0000.phone1', set: { 'placed-mass': { number: 9, unit: 'ft' } } };
    expect(await sync({ changes: [{ ...change, id: '0mabcdefi.0000.phone1' }, bad], after: 0 })).toMatchObject({
      status: 422,
      body: { errors: [{ pointer: '#/changes/1' }] },
    });
    expect((await sync({ changes: [], after: first.body.length })).body.changes).toEqual([]);
    expect((await sync({})).status).toBe(422);
    expect((await app.request('/api/jobs/nokey/sync', { method: 'POST', body: '{}' })).status).toBe(404);
  });
});
