import { afterEach, beforeEach, expect } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { createApp } from '../../src/server/app.ts';
import type { Store } from '../../src/server/store/store.ts';
import type { Place } from './engines.ts';

export const patrolList = [
  'Sta;End;Side;Width ft;Depth in;Distress;Remarks',
  '12+50;15+50;RT;12;2;alligator cracking;soft edge',
  '18+00;19+50;LT;10;1,5;rutting;',
  '40+00;40+60;RT;8;3;pothole;=see photo 7',
].join('\n');

/** The server over a store of its own for each test. */
export function appForEach(place: () => Promise<Place>) {
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
  return {
    store: () => store,
    request: async (address: string, init?: RequestInit): Promise<Response> => app.request(address, init),
  };
}

/** The pages of jobs over a store of their own for each test, used as plain forms. */
export function jobPages(place: () => Promise<Place>) {
  const { request } = appForEach(place);
  const post = (address: string, fields: Record<string, string>): Promise<Response> =>
    request(address, {
      method: 'POST',
      body: new URLSearchParams(fields),
      headers: { 'Content-Type': 'application/x-www-form-urlencoded' },
    });
  return {
    request,
    post,
    page: async (address: string): Promise<string> => (await request(address)).text(),
    /** Starts a job from the patrol list; gives its address. */
    async start(): Promise<string> {
      const answer = await post('/job', { name: 'Spring list', road: 'CR 9', text: patrolList });
      expect(answer.status).toBe(200);
      expect(await answer.text()).toContain('3 patches put on the job.');
      return answer.headers.get('Content-Location')!;
    },
  };
}

/** The hidden fields of the form that does something, as they stand on a page. */
export function formOn(html: string, act: string, line = ''): Record<string, string> {
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
}

export const lineOn = (html: string, label: string): string =>
  new RegExp(`<option value="(patch/[^"]+)">${label}</option>`).exec(html)![1]!;
