import type { App } from '../../src/server/env.ts';
import { hiddenFields } from './fixtures.ts';

/** Sends a text in by one way, and gives all that shows it. */
export type Door = (text: string) => Promise<Response[]>;

/** Every way into a server, by what the text is there. */
export function doorsOf(app: App): Readonly<Record<string, Door>> {
  const get = async (path: string): Promise<Response> => app.request(path);
  const form = async (path: string, fields: Record<string, string>): Promise<Response> =>
    app.request(path, { method: 'POST', body: new URLSearchParams(fields) });
  const json = async (path: string, body: unknown): Promise<Response> =>
    app.request(path, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(body),
    });
  /** As a part of an address; half a letter cannot stand in one. */
  const at = (text: string): string => encodeURIComponent(new TextDecoder().decode(new TextEncoder().encode(text)));

  const size = 'how many tons for 300 x 12 ft at 2 in';
  const newJob = async (fields: Record<string, string> = { name: 'x' }): Promise<string> =>
    (await form('/job', fields)).headers.get('Location') ?? '/job/none';

  /** Everything that is made of a job. */
  async function made(job: string): Promise<Response[]> {
    const pages = ['', '/day/2026-05-04', '/season', '/export.csv', '/export.json'].map((path) => get(job + path));
    return [...(await Promise.all(pages)), await form(`${job}/season`, { links: job })];
  }

  const stamp = '0mabcdefg.0001.phone1';
  return {
    'a question by the API': async (text) => [await json('/api/ask', { question: text || ' ' })],
    'a question on the page, asked on': async (text) => {
      const first = await form('/', { question: text });
      const carried = hiddenFields(await first.clone().text());
      const next = await form('/', { ...carried, question: size });
      return [first, next, await form('/sheet', carried)];
    },
    'a link with a question': async (text) => [await get(`/?q=${at(text)}`)],
    'fields of the page': async (text) => [
      await form('/', { question: size, units: text, job: text, talk: text, change: text, send: '', tick: text }),
      await form('/', { question: size, tick: text, send: text.slice(0, 500) }),
    ],
    'facts of a job': async (text) => {
      const job = { v: 1, turn: 1, facts: [{ quantity: text, turn: 1, choice: text }], goal: text, stage: text };
      const book = { v: 1, turn: 1, facts: [], book: { patches: [{ label: text, facts: [] }] } };
      const survey = {
        v: 1,
        turn: 1,
        facts: [],
        survey: { turn: 1, rows: [{ label: text, at: 0, readings: [1] }], units: { along: 'ft', depth: 'in' } },
      };
      return Promise.all(
        [job, book, survey].flatMap((sent) => [
          json('/api/ask', { question: 'tons', job: sent }),
          form('/sheet', { job: JSON.stringify(sent) }),
          form('/', { question: 'tons', job: JSON.stringify(sent) }),
        ]),
      );
    },
    'a talk that was carried': async (text) => {
      const talk = JSON.stringify({
        first: 1,
        turns: [{ question: text.slice(0, 2000) }],
        version: text.slice(0, 100),
      });
      return [await form('/', { question: 'and the tack?', talk }), await form('/job', { carry: talk, talk })];
    },
    'an agency file': async (text) => {
      const files = [
        { name: text, source: text, defaults: { 'unit-weight': { number: 112, unit: 'lb/yd2/in' } } },
        { name: 'A', source: 'B', date: text },
        { name: 'A', source: 'B', defaults: { [text]: { number: 1, unit: text } } },
        { name: 'A', source: 'B', limits: { 'lift-max': { max: { number: 1, unit: text } } } },
        { name: 'A', source: 'B', tables: { 'sign-spacing': [{ 'road-type': text, a: 1, b: 1, c: 1, unit: 'ft' }] } },
        text,
      ];
      const job = await newJob();
      const told = await Promise.all(files.map((agency) => json('/api/ask', { question: size, agency })));
      const ruled = [];
      for (const file of files) ruled.push(await form(job, { do: 'rules', text: JSON.stringify(file) }));
      return [...told, ...ruled, ...(await made(job))];
    },
    'a file of rates': async (text) => {
      const row = { code: 'A1', machine: 'grader', rate: 100, unit: 'USD/h' };
      const rows = [
        { ...row, note: text },
        { ...row, code: text },
        { ...row, machine: text },
        { ...row, [text]: 1 },
      ];
      const question = 'what does a grader cost for 6 hours';
      return Promise.all(
        rows.map((each) =>
          json('/api/ask', { question, rates: { name: text, year: 2025, source: text, seen: text, rates: [each] } }),
        ),
      );
    },
    'the name, road and list of a new job': async (text) => {
      const begun = await form('/job', { name: text, road: text, text, talk: text });
      return [begun, ...(await made(await newJob({ name: text.slice(0, 120), road: text.slice(0, 80) })))];
    },
    'fields of a patch and of its day': async (text) => {
      const job = await newJob();
      const cell = text.slice(0, 20);
      const sent = [
        await form(job, {
          do: 'patch',
          label: cell,
          road: cell,
          station: cell,
          lane: cell,
          note: text.slice(0, 1000),
          photos: text.slice(0, 900),
          day: '2026-05-04',
          'patch-length': '300 ft',
          'patch-width': '12 ft',
          'patch-depth': '2 in',
        }),
        await form(job, { do: 'patch', label: text, 'patch-length': text, size: text, day: text, defect: text }),
        await form(job, {
          do: 'load',
          ticket: cell,
          truck: cell,
          note: text.slice(0, 300),
          day: '2026-05-04',
          'placed-mass': '14 tons',
        }),
        await form(job, { do: 'hours', who: cell, machine: cell, task: cell, day: '2026-05-04', 'work-hours': '8 h' }),
        await form(job, { do: 'event', what: 'note', note: text.slice(0, 1000), day: '2026-05-04' }),
        await form(job, { do: 'job', name: text.slice(0, 120), note: text.slice(0, 1000) }),
        await form(job, { do: 'tell', text }),
        await form(job, {
          do: text,
          line: text,
          change: text,
          field: text,
          once: text,
          count: text,
          by: text,
          initials: text,
        }),
      ];
      return [...sent, ...(await made(job))];
    },
    'changes of a phone': async (text) => {
      const job = await newJob();
      const sync = `/api${job.replace('/job', '/jobs')}/sync`;
      const set = { name: text.slice(0, 120) || 'x', note: text.slice(0, 1000) || 'x' };
      return [
        await json(sync, { changes: [{ id: stamp, line: 'job', set }], after: 0 }),
        await json(sync, {
          changes: [{ id: text, by: text, line: text, set: { [text]: text }, over: { [text]: [text] } }],
          after: 0,
        }),
        await json(sync, {
          changes: [{ id: stamp.replace('0001', '0002'), line: `patch/${text}`, set: { note: 'x' } }],
          after: 0,
        }),
        ...(await made(job)),
      ];
    },
    'lists that are pasted': async (text) => {
      const job = await newJob();
      const cell = `"${text.replaceAll('"', '""')}"`;
      return [
        await form(job, {
          do: 'import',
          text: `Patch,Length,Width,Depth,${cell},Remarks\n1,300,12,2,${cell},${cell}\n2,${cell},12,2,x,y`,
        }),
        await form(job, { do: 'import', text: `record,name,note\njob,${cell},${cell}` }),
        await form(job, { do: 'import', text: `record,${cell}\n${cell},1` }),
        await form(job, {
          do: 'import',
          text: JSON.stringify({ jobBook: 1, changes: [{ id: stamp, line: 'job', set: { note: text || 'x' } }] }),
        }),
        await form(job, { do: 'import', text }),
        ...(await made(job)),
      ];
    },
    'links of a job': async (text) => {
      const job = await newJob();
      return [
        await form(`${job}/links`, { role: text }),
        await form(`${job}/links`, { revoke: text }),
        await form(`${job}/season`, { links: text }),
      ];
    },
    'fields of the quiz desk': async (text) => {
      const query = `topic=${at(text)}&seat=${at(text)}&seed=${at(text)}&count=${at(text)}&level=${at(text)}&kind=${at(text)}&about=${at(text)}&swap=${at(text)}`;
      const seeded = `seat=roller&count=3&seed=${at(text)}`;
      const paths = ['', '/sheet', '/key', '/tailgate', '/take', '/class', '/practice', '/sign-off'];
      const formats = ['json', 'csv', 'spreadsheet', 'qti3', 'text', text];
      return Promise.all([
        ...paths.flatMap((path) => [get(`/quiz${path}?${query}`), get(`/quiz${path}?${seeded}`)]),
        ...formats.map((format) => get(`/quiz/file?${seeded}&format=${at(format)}`)),
      ]);
    },
    'answers of a quiz and of a class': async (text) => {
      const begun = await form('/quiz/class', { seat: 'roller', count: '3', seed: text.slice(0, 200) });
      const trainer = begun.headers.get('Location') ?? '/quiz/class/none';
      const page = await get(trainer);
      const crew =
        /href="http:\/\/localhost(\/quiz\/class\/[^"]+)"/.exec(await page.clone().text())?.[1] ?? '/quiz/class/none';
      const sheet = hiddenFields(await (await get(crew)).text());
      return [
        begun,
        page,
        await form(crew, { ...sheet, who: text }),
        await form(crew, { ...sheet, who: 'AB', sheet: text, [`answer-${text}`]: text }),
        await form('/quiz/take', {
          seat: 'roller',
          count: '3',
          seed: text.slice(0, 200),
          [`answer-${text}`]: text,
          'answer-1': text,
        }),
        await get(trainer),
        await get(`${trainer}/file?format=csv`),
        await get(`${trainer}/file?format=json`),
      ];
    },
    'a quiz that was kept': async (text) => {
      const of = await (await get('/quiz/file?seat=roller&count=3&seed=a&format=json')).text();
      const kept = JSON.parse(of) as {
        title: string;
        seed: string;
        items: { stem: string; why: string; id: string; options: { text: string }[] }[];
      };
      kept.title = text.slice(0, 4000);
      for (const item of kept.items) {
        item.stem = text;
        item.why = text;
        for (const option of item.options) option.text = text;
      }
      return Promise.all(
        [JSON.stringify(kept), text].map(async (content) => {
          const body = new FormData();
          body.set('set', new File([content], text.replace(/\W/g, '') || 'a'));
          return app.request('/quiz/kept', { method: 'POST', body });
        }),
      );
    },
    'parts of addresses': async (text) =>
      Promise.all(
        ['/', '/cards/', '/rules/', '/rules/limit/', '/words/', '/job/', '/quiz/class/', '/assets/', '/api/jobs/']
          .map((path) => get(path + at(text)))
          .concat(
            ['/cards?q=', '/rules?q=', '/words?q=', '/job?name=', '/sheet?job='].map((path) => get(path + at(text))),
            [
              get(`/job/${at(text)}/day/${at(text)}`),
              get(`/job/${at(text)}/export.csv`),
              json(`/api/jobs/${at(text)}/sync`, {}),
            ],
          ),
      ),
  };
}
