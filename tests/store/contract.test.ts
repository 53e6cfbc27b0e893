import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { backUp, restore } from '../../src/server/store/backup.ts';
import type { Entry, Link, Part, Store } from '../../src/server/store/store.ts';
import { overBothEngines, type Place, sqlitePlace } from './engines.ts';

const at = '2026-04-02T07:30:00.000Z';
const entry = (id: string, body: unknown = { id }): Entry => ({ id, body, at });
const many = (from: number, to: number): Entry[] =>
  Array.from({ length: to - from + 1 }, (_, i) => entry(`e${from + i}`));
const link = (id: string, log: string, more: Partial<Link> = {}): Link => ({
  hash: `hash-of-${id}`,
  id,
  log,
  role: 'edit',
  madeAt: at,
  ...more,
});

overBothEngines((_engine, place) => {
  let here: Place;
  let store: Store;
  beforeEach(async () => {
    here = await place();
    store = await here.open();
  });
  afterEach(async () => {
    await store.close();
    await here.clear();
  });
  const again = async (): Promise<void> => {
    await store.close();
    store = await here.open();
  };

  describe('entries', () => {
    test('are kept in order, from one, and are there after it is opened again', async () => {
      expect(await store.append('job/a', [entry('x', { n: 1 }), entry('y', [1, 'é', null])])).toEqual({
        length: 2,
        added: 2,
        differing: [],
      });
      expect(await store.append('job/a', [entry('z')])).toMatchObject({ length: 3, added: 1 });
      await again();
      expect(await store.read('job/a', 0, 10)).toEqual([
        { place: 1, id: 'x', body: { n: 1 }, at },
        { place: 2, id: 'y', body: [1, 'é', null], at },
        { place: 3, id: 'z', body: { id: 'z' }, at },
      ]);
    });

    test('asked for at the same time are given as if asked for one by one', async () => {
      for (const log of ['job/a', 'job/b']) await store.append(log, many(1, 60));
      const asked = Array.from({ length: 90 }, (_, i) => ({
        log: ['job/a', 'job/b', 'job/none'][i % 3]!,
        after: (i * 7) % 64,
        most: 1 + ((i * 5) % 25),
      }));
      const answers = await Promise.all(asked.map(({ log, after, most }) => store.read(log, after, most)));
      for (const [i, { log, after, most }] of asked.entries()) {
        const last = log === 'job/none' ? 0 : Math.min(60, after + most);
        const places = Array.from({ length: Math.max(0, last - after) }, (_, each) => after + each + 1);
        expect(
          answers[i]!.map(({ place }) => place),
          JSON.stringify(asked[i]),
        ).toEqual(places);
      }
    });

    test('what is acknowledged is there for every question that comes after, however many are under way', async () => {
      const lengths: number[] = [];
      await Promise.all(
        Array.from({ length: 100 }, async (_, i) => {
          const { length } = await store.append(`job/${i % 4}`, [entry(`e${i}`)]);
          const entries = await store.read(`job/${i % 4}`, 0, 1000);
          lengths.push(entries.length - length);
          expect(entries.map(({ id }) => id)).toContain(`e${i}`);
          expect(await store.link(`hash-of-l${i}`)).toBeUndefined();
          await store.addLink(link(`l${i}`, `job/${i % 4}`));
          expect((await store.link(`hash-of-l${i}`))?.id).toBe(`l${i}`);
          expect(await store.revoke(`job/${i % 4}`, `l${i}`, at)).toBe(true);
          expect((await store.link(`hash-of-l${i}`))?.revokedAt).toBe(at);
        }),
      );
      expect(Math.min(...lengths)).toBeGreaterThanOrEqual(0);
    });

    test('beyond the most of a log are not added, none of those sent, and the others beside them are', async () => {
      await store.append('job/a', many(1, 8), 10);
      const [over, twice, other, under] = await Promise.all([
        store.append('job/a', many(20, 22), 10),
        store.append('job/a', many(1, 8), 8),
        store.append('job/b', many(20, 22), 10),
        store.append('job/a', many(30, 31), 10),
      ]);
      expect(over).toEqual({ length: 8, added: 0, differing: [], full: true });
      // What is there already takes no room.
      expect(twice).toEqual({ length: 8, added: 0, differing: [] });
      expect([other.length, under.length]).toEqual([3, 10]);
      expect((await store.read('job/a', 0, 100)).map(({ place }) => place)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    });

    test('sent twice are kept once; one with a known id and another body is named and changes nothing', async () => {
      await store.append('job/a', [entry('x', 1)]);
      expect(await store.append('job/a', [entry('x', 1), entry('y', 2), entry('x', 3)])).toEqual({
        length: 2,
        added: 1,
        differing: ['x'],
      });
      expect((await store.read('job/a', 0, 10)).map(({ body }) => body)).toEqual([1, 2]);
    });

    test('twice within one call are kept once', async () => {
      expect(await store.append('job/a', [entry('x'), entry('x')])).toEqual({ length: 1, added: 1, differing: [] });
    });

    test('of one log are none of another, though they have the same ids', async () => {
      await store.append('job/a', [entry('x', 'a')]);
      await store.append('job/b', [entry('x', 'b')]);
      expect((await store.read('job/b', 0, 10)).map(({ body }) => body)).toEqual(['b']);
    });

    test('are read page by page', async () => {
      await store.append('job/a', many(1, 2500));
      const places: number[] = [];
      for (let after = 0; ; after += 1000) {
        const page = await store.read('job/a', after, 1000);
        places.push(...page.map(({ place }) => place));
        if (page.length < 1000) break;
      }
      expect(places).toEqual(Array.from({ length: 2500 }, (_, i) => i + 1));
    });

    test('sent by many at once all get a place, and no place twice', async () => {
      const logs = ['job/a', 'job/b', 'job/c'];
      await Promise.all(
        Array.from({ length: 300 }, (_, i) => store.append(logs[i % 3]!, [entry(`p${i}`), entry(`q${i}`)])),
      );
      for (const log of logs) {
        const kept = await store.read(log, 0, 1000);
        expect(kept.map(({ place }) => place)).toEqual(Array.from({ length: 200 }, (_, i) => i + 1));
        expect(new Set(kept.map(({ id }) => id)).size).toBe(200);
      }
    });

    test('text of any kind comes back as it was', async () => {
      const body = { text: '½" \u0000 \ud800 \u2028 \'; drop table log; -- 路', deep: [[[{}]]], big: 1.5e300 };
      await store.append('job/a', [entry('x', body)]);
      await again();
      expect((await store.read('job/a', 0, 1))[0]!.body).toEqual(body);
    });

    test('none at all start nothing', async () => {
      expect(await store.append('job/a', [])).toEqual({ length: 0, added: 0, differing: [] });
      expect(await store.logs('job', '', 10)).toEqual([]);
    });
  });

  describe('logs', () => {
    test('are listed by kind, page by page, with their length', async () => {
      for (const log of ['job/a', 'class/a', 'job/b', 'job/c']) await store.append(log, many(1, 2));
      expect((await store.logs('job', '', 2)).map(({ log }) => log)).toEqual(['job/a', 'job/b']);
      expect(await store.logs('job', 'job/b', 2)).toEqual([{ log: 'job/c', length: 2, startedAt: at }]);
      expect(await store.length('job/c')).toBe(2);
      expect(await store.length('job/none')).toBe(0);
    });

    test('one that is erased is gone with its links, and the others stay', async () => {
      await store.append('job/a', many(1, 3));
      await store.append('job/b', many(1, 3));
      await store.addLink(link('k', 'job/a'));
      await store.erase('job/a');
      await again();
      expect(await store.read('job/a', 0, 10)).toEqual([]);
      expect(await store.link('hash-of-k')).toBeUndefined();
      expect(await store.length('job/b')).toBe(3);
    });

    test.each(['', 'job', 'job/', '/a', 'job/a/b', 'JOB/a', 'job/ü', `job/${'x'.repeat(101)}`])(
      'a name that is none is refused: %s',
      async (name) => {
        await expect(store.append(name, [entry('x')])).rejects.toMatchObject({ kind: 'badName' });
      },
    );
  });

  describe('links', () => {
    test('open their log by the hash of their key until they are revoked, and are listed after', async () => {
      await store.addLink(link('k1', 'job/a'));
      await store.addLink(link('k2', 'job/a', { role: 'look' }));
      expect(await store.link('hash-of-k1')).toEqual(link('k1', 'job/a'));
      expect(await store.revoke('job/a', 'k1', '2026-04-03T00:00:00.000Z')).toBe(true);
      await again();
      const revoked = link('k1', 'job/a', { revokedAt: '2026-04-03T00:00:00.000Z' });
      expect(await store.link('hash-of-k1')).toEqual(revoked);
      expect(await store.links('job/a')).toEqual([revoked, link('k2', 'job/a', { role: 'look' })]);
    });

    test('one revoked twice keeps its first time; one that never was is not revoked', async () => {
      await store.addLink(link('k1', 'job/a'));
      await store.revoke('job/a', 'k1', '2026-04-03T00:00:00.000Z');
      expect(await store.revoke('job/a', 'k1', '2026-05-03T00:00:00.000Z')).toBe(true);
      expect((await store.link('hash-of-k1'))?.revokedAt).toBe('2026-04-03T00:00:00.000Z');
      expect(await store.revoke('job/a', 'k9', at)).toBe(false);
      expect(await store.revoke('job/none', 'k1', at)).toBe(false);
      expect(await store.link('hash-of-k9')).toBeUndefined();
    });

    test('a hash is given once, and an entry written at the same time is not lost with the refused link', async () => {
      await store.addLink(link('k1', 'job/a'));
      const [refused, kept] = await Promise.allSettled([
        store.addLink(link('k1', 'job/b')),
        store.append('job/b', [entry('x')]),
      ]);
      expect([refused.status, kept.status]).toEqual(['rejected', 'fulfilled']);
      expect(await store.length('job/b')).toBe(1);
    });
  });

  describe('a backup', () => {
    const filled = async (): Promise<void> => {
      await store.append('job/a', many(1, 1200));
      await store.append('class/b', [entry('é', { text: '½"' })]);
      await store.addLink(link('k1', 'job/a'));
      await store.addLink(link('k2', 'job/a', { revokedAt: at }));
    };
    const parts = async (from: Store): Promise<Part[]> => {
      const all: Part[] = [];
      await from.dump(async (part) => {
        all.push(part);
      });
      return all;
    };

    test('brought back into an empty store of either engine is the same store', async () => {
      await filled();
      const other = sqlitePlace();
      const file = `${other.env.DATA}/all.jsonl`;
      const tally = await backUp(store, file);
      expect(tally).toEqual({ logs: 2, entries: 1201 });
      const before = await parts(store);
      for (const log of ['job/a', 'class/b']) await store.erase(log);
      expect(await restore(store, file, false)).toEqual(tally);
      expect(await parts(store)).toEqual(before);
      const second = await other.open();
      await restore(second, file, false);
      expect(await parts(second)).toEqual(before);
      expect(await second.append('job/a', [entry('new')])).toMatchObject({ length: 1201 });
      await second.close();
      await other.clear();
    });

    test('does not go over what is there unless it is to, and a damaged one changes nothing', async () => {
      await filled();
      const other = sqlitePlace();
      const file = `${other.env.DATA}/all.jsonl`;
      await backUp(store, file);
      await store.append('job/a', [entry('later')]);
      await expect(restore(store, file, false)).rejects.toMatchObject({ kind: 'notEmpty' });
      const { readFile, writeFile } = await import('node:fs/promises');
      const text = await readFile(file, 'utf8');
      const damaged = {
        cut: text.slice(0, text.length / 2),
        'last line gone': text.slice(0, text.trimEnd().lastIndexOf('\n') + 1),
        'a letter changed': text.replace('½', '¼'),
        'a line twice': text.replace(/^(.*"e7".*\n)/m, '$1$1'),
        'no backup': 'job,patch\n1,2\n',
        empty: '',
      };
      for (const [what, broken] of Object.entries(damaged)) {
        await writeFile(file, broken);
        await expect(restore(store, file, true), what).rejects.toMatchObject({ kind: 'badBackup' });
      }
      expect(await store.length('job/a')).toBe(1201);
      await writeFile(file, text.replace('"v":1', '"v":2'));
      await expect(restore(store, file, true)).rejects.toMatchObject({ kind: 'newer' });
      await writeFile(file, text);
      await restore(store, file, true);
      expect(await store.length('job/a')).toBe(1200);
      await other.clear();
    });
  });
});
