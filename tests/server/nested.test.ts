import { describe, expect, test } from 'vitest';
import { isNestedDeep, jsonIn } from '../../src/rules/json.ts';
import { appOnStore } from './app-on-store.ts';

/** JSON that nests beyond all measure: parsing takes it, writing it again runs out of room. And keys that are names of every object. */
const { app, reports } = appOnStore();

const lists = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);
const objects = (depth: number): string => `${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`;
const nests = [lists(4000), lists(20_000), objects(3000), objects(6000)];
const own = '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"toString":1,"hasOwnProperty":null';
const stamp = '0mabcdefg.0001.phone1';

/** Every place of a request that takes JSON, with what is to stand there. */
const places: Record<string, (json: string) => Promise<Response>> = {};
const asJson = (body: string) => ({ method: 'POST', headers: { 'Content-Type': 'application/json' }, body });
const asForm = (fields: Record<string, string>) => ({ method: 'POST', body: new URLSearchParams(fields) });
for (const member of ['question', 'job', 'agency', 'rates', 'units', 'lang'])
  places[`${member} of a question`] = async (json) =>
    app.request(
      '/api/ask',
      asJson(member === 'question' ? `{"question":${json}}` : `{"question":"tons","${member}":${json}}`),
    );
for (const [name, around] of [
  ['a field of a job', '{"v":1,"turn":0,"facts":[],"x":#}'],
  ['facts of a job', '{"v":1,"turn":0,"facts":[{"quantity":"patch-depth","turn":1,"number":#,"unit":"in"}]}'],
  ['patches of a job', '{"v":1,"turn":0,"facts":[],"book":#}'],
  ['readings of a job', '{"v":1,"turn":0,"facts":[],"survey":#}'],
] as const) {
  places[`${name}, as JSON`] = async (json) =>
    app.request('/api/ask', asJson(`{"question":"tons","job":${around.replace('#', json)}}`));
  places[`${name}, in the form`] = async (json) =>
    app.request('/', asForm({ question: 'tons', job: around.replace('#', json) }));
  places[`${name}, for its sheet`] = async (json) => app.request('/sheet', asForm({ job: around.replace('#', json) }));
}
for (const part of ['defaults', 'limits', 'tables'])
  places[`${part} of an agency`] = async (json) =>
    app.request('/api/ask', asJson(`{"question":"tons","agency":{"name":"a","source":"b","${part}":${json}}}`));
places['rows of rates'] = async (json) =>
  app.request('/api/ask', asJson(`{"question":"tons","rates":{"name":"a","source":"b","year":2025,"rows":${json}}}`));
places['the talk of the form'] = async (json) =>
  app.request('/', asForm({ question: 'tons', talk: `{"first":1,"start":${json},"turns":[],"version":"a"}` }));
places['the job of a talk that is carried on'] = async (json) =>
  app.request('/job', asForm({ talk: json, carry: json }));
const job = async (): Promise<string> =>
  (await app.request('/job', asForm({ name: 'deep' }))).headers.get('Location')!.replace('/job/', '');
const sync = async (body: string) => app.request(`/api/jobs/${await job()}/sync`, asJson(body));
places['changes of a phone'] = (json) => sync(`{"changes":${json},"after":0}`);
places['a change of a phone'] = (json) => sync(`{"changes":[${json}],"after":0}`);
places['fields of a change'] = (json) => sync(`{"changes":[{"id":"${stamp}","line":"job","set":${json}}],"after":0}`);
places['what a change replaces'] = (json) =>
  sync(`{"changes":[{"id":"${stamp}","line":"job","set":{"name":"a"},"over":${json}}],"after":0}`);
places['rules of a change'] = (json) =>
  sync(`{"changes":[{"id":"${stamp}","line":"job","set":{"rules":{"rules":${json}}}}],"after":0}`);
const act = async (what: string, text: string) => app.request(`/job/${await job()}`, asForm({ do: what, text }));
places['rules on the page of a job'] = (json) => act('rules', json);
places['a saved job that is taken in'] = (json) => act('import', `{"jobBook":1,"changes":${json}}`);
places['a line of a job as CSV'] = (json) => act('import', `record,rules\njob,"${json.replaceAll('"', '""')}"`);
places['a quiz that was kept'] = async (json) => {
  const form = new FormData();
  form.set('set', new File([json], 'set.json'));
  return app.request('/quiz/kept', { method: 'POST', body: form });
};

describe.each(Object.keys(places))('JSON for %s', (name) => {
  test('nested beyond measure is refused or dropped, never a fault', async () => {
    for (const json of nests) {
      reports.length = 0;
      const { status } = await places[name]!(json);
      expect(reports).toEqual([]);
      expect(status, json.slice(0, 10)).toBeLessThan(500);
    }
  });

  test('with keys that every object has changes no object but itself', async () => {
    for (const json of [`{${own}}`, `[{${own}}]`, `{"name":"a","source":"b",${own}}`]) {
      reports.length = 0;
      const { status } = await places[name]!(json);
      expect(reports).toEqual([]);
      expect(status).toBeLessThan(500);
      expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    }
  });
});

test('what is nested as our own forms are is read; deeper is not', () => {
  expect(jsonIn(lists(60))).toBeDefined();
  expect(jsonIn(lists(70))).toBeUndefined();
  expect(jsonIn('{"a":')).toBeUndefined();
  expect(isNestedDeep({ a: [{ b: 1 }] })).toBe(false);
});
