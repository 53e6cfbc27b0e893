import { expect, test } from 'vitest';
import { overBothEngines } from './engines.ts';
import { formOn, jobPages, lineOn, patrolList } from './job-pages.ts';

overBothEngines((_engine, place) => {
  const { request, post, page, start } = jobPages(place);

  test('a job goes from a pasted patrol list through order and laying to its record', async () => {
    const job = await start();
    // 300×12×2, 150×10×1.5 and 60×8×3 at 110 lb/yd2/in: 44, 13.75 and 8.8 tons, by hand.
    let html = await page(job);
    expect(html).toContain('66.6 tons in place');
    expect(html).toContain('=see photo 7');
    await post(job, { ...formOn(html, 'tell'), text: 'mix is $85 a ton and trucks carry 12 tons' });
    html = await page(job);
    expect(html).toMatch(/Cost of the mix ordered: \$/);
    await post(job, {
      ...formOn(html, 'load'),
      day: '2026-05-04',
      time: '08:10',
      patch: lineOn(html, '1'),
      'placed-mass': '45 tons',
      'placed-length': '140 ft',
      ticket: '77',
    });
    html = await page(job);
    expect(html).toContain('It is going down too thick');
    await post(job, { ...formOn(html, 'hours'), day: '2026-05-04', who: 'j.d.', 'work-hours': '9' });
    await post(job, formOn(await page(job), 'done', lineOn(html, '1')));
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

  test('two who edit what the other has not seen are both told, and either can settle it', async () => {
    const job = await start();
    const seen = await page(job);
    const edit = { ...formOn(seen, 'patch', lineOn(seen, '2')), 'has-lane': '1' };
    await post(job, { ...edit, by: 'AB', lane: 'left', once: '' });
    await post(job, { ...edit, by: 'CD', lane: 'both', once: '' });
    const html = await page(job);
    expect(html).toContain('Two people set this without seeing each other');
    expect(html).toContain('both (CD)');
    expect(html).toContain('left (AB)');
    await post(job, formOn(html, 'settle'));
    expect(await page(job)).not.toContain('Two people set this');
  });

  test('a form sent twice counts once; sent again with something else it is another line', async () => {
    const job = await start();
    const fields = { ...formOn(await page(job), 'load'), day: '2026-05-04', 'placed-mass': '12 tons' };
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
    expect([(await request(look)).status, (await request(record)).status, (await request(job)).status]).toEqual([
      410, 410, 200,
    ]);
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
        await request(`/api${address.replace('/job', '/jobs')}/sync`, {
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
    for (const text of [saved, patrolList]) expect((await post(record, { do: 'import', text })).status).toBe(422);
    for (const address of [look, record]) {
      expect((await request(`${address}/links`)).status).toBe(403);
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
      for (const each of pages) expect([each, (await request(address + each)).status]).toEqual([each, 410]);
      expect(await sync(address, [load('7')])).toBe(410);
      // Nor does beginning it again open it.
      expect(await sync(address, [load('8')], { begin: true })).toBe(410);
      expect((await post(address, { do: 'load', 'placed-mass': '3 tons' })).status).toBe(410);
      expect((await post('/job', { talk, link: address })).status).toBe(422);
    }
    // Nobody's key opens nothing, and a key of another kind is no key of a job.
    const stranger = `/job/${'A'.repeat(22)}`;
    for (const each of pages) expect((await request(stranger + each)).status).toBe(404);
    expect(await sync(stranger, [])).toBe(404);
    // Answers about a job are kept by nobody on the way.
    expect((await request(job)).headers.get('Cache-Control')).toContain('private');
    expect((await request(job)).headers.get('Referrer-Policy')).toBe('no-referrer');
  });

  test('a job begun without signal is started under the key its phone made, once', async () => {
    const key = 'Zz0-_'.padEnd(22, 'k');
    const sync = async (body: object) => {
      const answer = await request(`/api/jobs/${key}/sync`, {
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
    const odd = await request('/api/jobs/short/sync', {
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
      const answer = await request(`/api/jobs/${key}/sync`, {
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
    expect((await request('/api/jobs/nokey/sync', { method: 'POST', body: '{}' })).status).toBe(404);
  });
});
