import { expect, test } from 'vitest';
import { requestsIn } from '../../scripts/gaps.mjs';
import { addKeeper, revokeKeepers } from '../../src/server/gaps/gaps.ts';
import { overBothEngines } from './engines.ts';
import { appForEach } from './job-pages.ts';

overBothEngines((_engine, place) => {
  const { store, request } = appForEach(place);
  const send = async (question: string) => {
    const answer = await request('/gaps', { method: 'POST', body: new URLSearchParams({ question }) });
    return { status: answer.status, html: await answer.text() };
  };

  test('a question is kept only when it is sent, without names, once a day, and only where there is no answer', async () => {
    const key = await addKeeper(store(), '2026-05-01T00:00:00.000Z');
    const shown = async () => (await request(`/keeper/${key}`)).text();
    // Asking keeps nothing.
    await request('/', { method: 'POST', body: new URLSearchParams({ question: 'what does a zebra cost' }) });
    expect(await shown()).toContain('None yet.');
    const offered = await (await request('/?q=what+does+a+zebra+cost')).text();
    expect(offered).toContain('href="/gaps?q=what%20does%20a%20zebra%20cost"');
    expect(await (await request('/gaps?q=my+name+is+dave')).text()).toContain('value="my name is …"');
    expect(await shown()).toContain('None yet.');

    for (let time = 0; time < 2; time++)
      expect((await send('my name is dave, what does a zebra cost')).html).toContain('Sent.');
    expect((await send('how many tons for 300 x 12 ft at 2 in')).html).toContain('was not kept');
    expect((await send('  ')).status).toBe(422);
    const html = await shown();
    expect(html).toContain('my name is …, what does a zebra cost');
    expect(html).not.toContain('dave');
    const lines = await (await request(`/keeper/${key}/export.jsonl`)).text();
    expect(requestsIn(lines)).toMatchObject({
      requests: [{ question: 'my name is …, what does a zebra cost' }],
      unread: [],
    });
    expect(JSON.parse(lines)).toEqual({
      question: 'my name is …, what does a zebra cost',
      reason: expect.any(String),
      day: new Date().toISOString().slice(0, 10),
    });

    expect((await request(`/keeper/${key}`, { method: 'POST' })).status).toBe(303);
    expect(await shown()).toContain('None yet.');
  });

  test('only the link of a keeper opens them, until it is taken back', async () => {
    const key = await addKeeper(store(), '2026-05-01T00:00:00.000Z');
    const job = (await request('/job', { method: 'POST', body: new URLSearchParams({ name: 'x' }) })).headers.get(
      'Location',
    )!;
    const opened = async (path: string) => (await request(path)).status;
    expect(await opened(`/keeper/${key}`)).toBe(200);
    for (const other of [job.split('/')[2]!, 'A'.repeat(22), 'short'])
      for (const path of [`/keeper/${other}`, `/keeper/${other}/export.jsonl`]) expect(await opened(path)).toBe(404);
    // Nor does it open a job.
    expect(await opened(`/job/${key}`)).toBe(404);
    expect(await revokeKeepers(store(), '2026-05-02T00:00:00.000Z')).toBe(1);
    expect(await opened(`/keeper/${key}`)).toBe(404);
    expect((await request(`/keeper/${key}`, { method: 'POST' })).status).toBe(404);
  });
});
