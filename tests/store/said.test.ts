import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { overBothEngines } from './engines.ts';
import { formOn, jobPages } from './job-pages.ts';

overBothEngines((_engine, place) => {
  const { request, post, page, start } = jobPages(place);

  test('what is said on the page is written down once, said back, and taken back; nothing is written of a question', async () => {
    const job = await start();
    const say = async (text: string, more: Record<string, string> = {}): Promise<string> => {
      const answer = await post(job, { ...formOn(await page(job), 'tell'), text, ...more });
      return answer.text();
    };
    const fields = { ...formOn(await page(job), 'tell'), text: 'we laid 42 tons on patch 1' };
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
    const once = { ...formOn(await page(job), 'tell'), text: 'done with patches 2 and 3' };
    for (let sent = 0; sent < 2; sent++) await post(job, once);
    expect(await page(job)).toContain('Left: 1 patch,');
    // A list sent twice is taken once.
    const list = {
      ...formOn(await page(job), 'import'),
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
      for (const [name, value] of Object.entries(formOn(await page(job), 'rates'))) body.set(name, value);
      body.set('text', '');
      body.set('file', new File([file], 'rates.json', { type: 'application/json' }));
      return (await request(job, { method: 'POST', body })).text();
    };
    const line = text.split('\n').findIndex((row) => row.includes('"8332"')) + 1;
    expect(await send(text.replace('"code": "8332"', '"cod": "8332"'))).toMatch(
      new RegExp(`The rates were not taken\\. Line ${line}, at rates\\[1\\]`),
    );
    expect(await page(job)).not.toContain('Rates of 2025');
    expect(await send(text)).toContain('Rates of 2025 from FEMA Schedule of Equipment Rates hold for this job now');
    const machines = 'grader 8331 and 2 dump trucks 8722';
    await post(job, {
      ...formOn(await page(job), 'job'),
      machines,
      'has-machines': '1',
      name: 'Spring list',
      road: 'CR 9',
    });
    await post(job, { ...formOn(await page(job), 'tell'), text: '8 hours' });
    const html = await page(job);
    // 131.96 + 2 × 120.74 an hour.
    // 6 × 131.96, by the schedule of the job; an accident comes first here too.
    const say = async (text: string): Promise<string> =>
      (await post(job, { ...formOn(await page(job), 'tell'), text })).text();
    expect(await say('what does a grader 8331 cost for 6 hours')).toContain('$792');
    expect(await say('Joe is burned by hot asphalt')).toContain('911');
    expect(await say('tell me a joke')).toContain('Nothing of that is known here');
    for (const said of ['code 8331, $131.96/h', '2 × dump truck', 'Rates of 2025 from FEMA'])
      expect(html).toContain(said);
    const copy = (await post('/job', { text: await page(`${job}/export.csv`) })).headers.get('Content-Location')!;
    expect(await page(copy)).toContain('code 8331, $131.96/h');
  });
});
