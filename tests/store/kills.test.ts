import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect, test } from 'vitest';
import { overBothEngines } from './engines.ts';

/** How often the server is killed; KILLS=50 for the long run. */
const kills = Number(process.env.KILLS || 4);

/** Starts the server on a store and waits for its address. */
async function start(env: Readonly<Record<string, string>>): Promise<{ child: ChildProcess; address: string }> {
  const child = spawn(process.execPath, ['scripts/run.mjs', 'start'], { env: { ...process.env, ...env, PORT: '0' } });
  let out = '';
  while (!/http:\/\/\S+/.test(out)) out += (await once(child.stdout!, 'data'))[0];
  return { child, address: /http:\/\/\S+/.exec(out)![0] };
}

overBothEngines((_engine, place) => {
  test(
    `the server is killed ${kills} times while it writes, and every change it acknowledged is there`,
    async () => {
      const here = await place();
      const acknowledged: string[] = [];
      let job = '';
      let made = 0;
      for (let round = 0; round <= kills; round++) {
        const { child, address } = await start(here.env);
        const ended = once(child, 'close');
        try {
          if (job === '') {
            const answer = await fetch(`${address}/job`, {
              method: 'POST',
              body: new URLSearchParams({ name: 'kills' }),
              redirect: 'manual',
            });
            job = answer.headers.get('Location')!.split('/').at(-1)!;
          }
          const sync = (changes: readonly unknown[], after: number) =>
            fetch(`${address}/api/jobs/${job}/sync`, { method: 'POST', body: JSON.stringify({ changes, after }) });
          const there = new Set<string>();
          for (let after = 0; ; ) {
            const page = (await (await sync([], after)).json()) as { length: number; changes: { id: string }[] };
            for (const { id } of page.changes) there.add(id);
            after = page.length;
            if (page.changes.length === 0) break;
          }
          expect(acknowledged.filter((id) => !there.has(id))).toEqual([]);
          if (round === kills) break;
          const phone = async (): Promise<void> => {
            for (;;) {
              const id = `0mabcdefg.${(made++).toString(36).padStart(4, '0')}.phone1`;
              const answer = await sync([{ id, line: `event/${made}`, set: { note: 'x'.repeat(200) } }], 1e6);
              if (!answer.ok) throw new Error(await answer.text());
              await answer.arrayBuffer();
              acknowledged.push(id);
            }
          };
          const phones = Promise.allSettled(Array.from({ length: 8 }, phone));
          await new Promise((go) => setTimeout(go, 300 + (round % 7) * 60));
          child.kill('SIGKILL');
          await phones;
        } finally {
          child.kill('SIGKILL');
          await ended;
        }
      }
      expect(acknowledged.length).toBeGreaterThan(kills);
      await here.clear();
    },
    30_000 + kills * 5_000,
  );
});
