import { describe, expect, test } from 'vitest';
import { fold } from '../../../src/ask/book/book.ts';
import { type Change, stampAfter } from '../../../src/ask/book/change.ts';
import { dayRecord } from '../../../src/ask/book/day.ts';
import { type OnJob, saidOnJob } from '../../../src/ask/book/on-job.ts';
import { readChange } from '../../../src/ask/book/read-change.ts';
import type { Role } from '../../../src/ask/book/roles.ts';
import { sheetOf } from '../../../src/ask/book/sheet.ts';
import { totalsOf } from '../../../src/ask/book/totals.ts';
import { engine } from '../../../src/ask/engine.ts';
import type { Unit } from '../../../src/calc/units.ts';

const is = (number: number, unit: Unit) => ({ number, unit });
const size = (length: number, width: number, depth: number) => ({
  'patch-length': is(length, 'ft'),
  'patch-width': is(width, 'ft'),
  'patch-depth': is(depth, 'in'),
});

/** A job on which one talks, as a phone holds it. */
class Talk {
  changes: Change[] = [];
  last: readonly string[] = [];
  job: unknown;
  role: Role = 'edit';
  private stamp = (): string => {
    this.at = stampAfter(this.at, 1000, 'phone1');
    return this.at;
  };
  private at: string | undefined;

  constructor() {
    const lines: [string, Change['set']][] = [
      ['job', { name: 'Spring list', road: 'CR 9', 'unit-weight': is(110, 'lb/yd2/in') }],
      ['patch/a', { label: '1', ...size(300, 12, 2) }],
      ['patch/b', { label: '2', ...size(150, 10, 1.5) }],
      ['patch/c', { label: '3', ...size(60, 8, 3) }],
    ];
    for (const [line, set] of lines) this.changes.push({ id: this.stamp(), line, set });
  }

  say(question: string, more: Partial<OnJob> = {}): string {
    const said = saidOnJob(
      { question, job: this.job },
      {
        role: this.role,
        changes: this.changes,
        stamp: this.stamp,
        day: (back) => `2026-05-0${4 - back}`,
        last: this.last,
        ...more,
      },
    );
    if (!said) return '';
    // What is to be kept is what a server takes.
    for (const change of said.changes) expect(readChange(change, engine.knowledge)).toEqual(change);
    this.changes.push(...said.changes);
    this.last = said.last;
    this.job = said.reply.job;
    return said.reply.text;
  }

  get sheet() {
    return sheetOf(fold(this.changes), engine.knowledge);
  }
  get totals() {
    return totalsOf(engine, this.sheet);
  }
  get laid(): number[] {
    return this.totals.patches.map(({ laid }) => laid / 2000);
  }
  get done(): boolean[] {
    return this.sheet.patches.map(({ done }) => done);
  }
}

describe('a talk on a job book', () => {
  // 300 × 12 × 2, 150 × 10 × 1.5 and 60 × 8 × 3 at 110 lb/yd2/in: 44, 13.75 and 8.8 tons, by hand.
  test('tons laid become a load of that day, are said back and can be taken back', () => {
    const talk = new Talk();
    const text = talk.say('we laid 42 tons on patch 1');
    expect(text).toContain('On Spring list, CR 9: Patch 1: 42.0 tons laid, 42.0 tons down in all.');
    expect(text).toContain('2.0 tons still to lay');
    expect(text).toContain('Written under 2026-05-04.');
    expect(talk.laid).toEqual([42, 0, 0]);
    expect(dayRecord(talk.sheet, talk.totals, '2026-05-04').mass / 2000).toBe(42);
    expect(talk.say('undo')).toContain('Taken back');
    expect(talk.laid).toEqual([0, 0, 0]);
    expect(talk.sheet.loads).toEqual([]);
    expect(talk.say('undo')).toContain('Nothing was written from here');
  });

  test('every load comes on top, those of others too', () => {
    const talk = new Talk();
    talk.say('we laid 20 tons on patch 1');
    talk.changes.push({
      id: stampAfter(fold(talk.changes).last, 5000, 'phone2'),
      line: 'load/other',
      set: { patch: 'patch/a', 'placed-mass': is(10, 'ton') },
    });
    expect(talk.say('yesterday we put 12.5 tons down on patch 1')).toContain('42.5 tons down in all');
    expect(talk.laid).toEqual([42.5, 0, 0]);
    expect(talk.sheet.loads.map((load) => load.text('day'))).toContain('2026-05-03');
    expect(talk.say("what's left")).toContain('Left: 3 patches (1, 2, 3), 24.1 tons to lay.');
  });

  test('patches are ticked off, several at once, and asking whether one is done ticks nothing off', () => {
    const talk = new Talk();
    expect(talk.say('is patch 2 done?')).not.toContain('Patch 2 is done');
    expect(talk.done).toEqual([false, false, false]);
    expect(talk.say('done with patches 2 and 3')).toContain('Patch 2 is done. Patch 3 is done.');
    expect(talk.done).toEqual([false, true, true]);
    talk.say('undo');
    expect(talk.done).toEqual([false, false, false]);
    expect(talk.say('done with patches 2 and 9')).toContain('There is no patch 9 on the job');
    expect(talk.done).toEqual([false, false, false]);
  });

  test('a patch is put on, changed and taken off; one that is only asked about stays as it is', () => {
    const talk = new Talk();
    expect(talk.say('add patch 90 x 10 ft at 2 in')).toContain('Patch 4 is on the job');
    expect(talk.sheet.patches).toHaveLength(4);
    talk.say('undo');
    expect(talk.sheet.patches).toHaveLength(3);
    expect(talk.say('patch 2 is 3 in deep')).toContain('Patch 2 is changed');
    expect(talk.totals.patches[1]!.figures['premix-mass']!.value / 2000).toBeCloseTo(27.5, 9);
    expect(talk.say('how many tons for patch 3 if it is 1 in deep?')).toContain('2.9 tons');
    expect(talk.totals.patches[2]!.figures['premix-mass']!.value / 2000).toBeCloseTo(8.8, 9);
    talk.say('take patch 3 off the job');
    expect(talk.sheet.patches.map(({ label }) => label)).toEqual(['1', '2']);
  });

  test('what cannot be read whole is asked, and nothing of it is written', () => {
    const talk = new Talk();
    const before = talk.changes.length;
    expect(talk.say('we laid 42 tons on patches 1 and 2')).toContain('each patch by itself');
    expect(talk.say('put 3 loads down on patch 1')).toContain('by the tickets');
    expect(talk.say('we laid 42 tons on patch 8')).toContain('There is no patch 8 on the job. I have 1, 2, 3.');
    expect(talk.say('new job')).toContain('not emptied by a word');
    expect(talk.say('3 loads down at 140 ft of 300, will we run short?')).toContain('You run short');
    expect(talk.changes).toHaveLength(before);
    expect(talk.say('dumped 2 loads, 28 tons, on patch 3')).toContain('28.0 tons laid');
    expect(talk.laid).toEqual([0, 0, 28]);
  });

  test('a role writes what it may', () => {
    const talk = new Talk();
    talk.role = 'look';
    expect(talk.say('we laid 42 tons on patch 1')).toContain('look, not write');
    expect(talk.say("what's left")).toContain('66.6 tons to lay');
    talk.role = 'record';
    expect(talk.say('add patch 90 x 10 ft at 2 in')).toContain('not change patches');
    expect(talk.say('done with patch 1')).toContain('Patch 1 is done');
    expect(talk.done).toEqual([true, false, false]);
  });

  test('the talk keeps what is its own; other questions are none of the job', () => {
    const talk = new Talk();
    talk.job = { v: 1, turn: 1, facts: [{ quantity: 'truck-payload', turn: 1, number: 12, unit: 'ton' }] };
    talk.say("what's left");
    expect(talk.job).toEqual({
      v: 1,
      turn: 2,
      facts: [{ quantity: 'truck-payload', turn: 1, number: 12, unit: 'ton' }],
    });
    for (const question of ['how many tons for 300 x 12 ft at 2 in', 'what is a windrow', 'help, he is burned'])
      expect(talk.say(question)).toBe('');
  });
});
