import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { workFigures } from '../../src/ask/work-figures.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { work } from '../../src/rules/work.ts';
import { last, talk } from './work.ts';

/** Choices that a reply about the work may ask for. */
const asked = [
  'base-state water-state crack-state rut-edges defect-extent edge-break-state ravel-state defect',
  'tack-state weather-state traffic-control-state wave-place chunk-look soft-place ridge-place streak-look crack-look stick-place',
].flatMap((line) => line.split(' '));
const answers = asked.flatMap((id) =>
  knowledge.choices.get(id)!.options.map((option) => [id, option.id, option.title] as const),
);

describe('an answer that is offered is understood', () => {
  test.each(answers)('%s=%s: "%s"', (choice, option, title) => {
    const reply = ask({ question: title, job: { v: 1, turn: 1, facts: [], asked: choice } });
    expect(reply.job.facts.find(({ quantity }) => quantity === choice)).toMatchObject({ choice: option });
  });
});

describe('which repair is answered', () => {
  test.each([
    ['ruts 3/4 deep, base solid and dry, no cracking. blade it?', 'blade-patch'],
    ['ruts are only a quarter inch deep, need to fix them?', 'watch-it'],
    ['ruts 3/4 inch deep with humps alongside, base firm, which fix', 'cut-then-blade'],
    ['alligator cracking, light, base is firm dry and drained. can we blade patch', 'blade-patch'],
    ['wide alligator cracks, pieces rocking and mud squirting up', 'dig-out'],
    ['wheel paths are flushing black and slick, can we just blade over it', 'blot-or-mill'],
  ])('%s: %s, from what was said', (question, expected) => {
    expect(last(question)).toMatchObject({ kind: 'repair', topic: expected });
  });

  test('edges of a rut that nobody spoke of are taken for level, and that is said', () => {
    const { assumed } = last('ruts 3/4 deep, base solid and dry, no cracking. blade it?');
    expect(assumed.map(({ quantity }) => quantity)).toContain('rut-edges');
  });

  test('alligator cracking over a pumping base is no blade patch', () => {
    const reply = last('alligator cracking and the base pumps water, blade patch it?');
    expect(reply).toMatchObject({ kind: 'repair', topic: 'dig-out' });
    expect(reply.text).toMatch(/^No blade patch here/);
    expect(reply.text).toMatch(/engineer/);
  });

  test('one question at a time, each that decides, then the repair with its reason and severity', () => {
    const replies = talk('alligator cracking in the wheelpath, which fix', 'firm', 'dry and drained');
    expect(replies.slice(0, 2).map(({ kind, clarify }) => [kind, clarify?.quantity])).toEqual([
      ['clarify', 'base-state'],
      ['clarify', 'water-state'],
    ]);
    const reply = replies[2]!;
    expect(reply).toMatchObject({ kind: 'repair', topic: 'blade-patch' });
    expect(reply.text).toMatch(/holding repair/i);
    expect(last('alligator cracking, a network still tight, base firm, dry and drained').text).toMatch(
      /moderate by LTPP .*as restated/,
    );
    expect(reply.assumed.map(({ quantity }) => quantity)).toEqual(
      expect.arrayContaining(['recurring', 'defect-place']),
    );
  });

  test('no defect named: asks what is wrong, with every defect to choose from', () => {
    const reply = last('is this a blade patch job');
    expect(reply).toMatchObject({ kind: 'clarify', clarify: { quantity: 'defect' } });
    expect(reply.clarify?.choices).toHaveLength(work.defects.size);
    expect(last('is this a blade patch job', 'bleeding of the old road')).toMatchObject({
      kind: 'repair',
      topic: 'blot-or-mill',
    });
  });

  test.each([
    ['shoving at stop sign', 'cut-then-blade'],
    ['the old road is bleeding, can we blade over it', 'blot-or-mill'],
    ['shoulder drop off 4 in', 'shoulder-pull'],
  ])('%s: %s', (question, topic) => {
    expect(last(question)).toMatchObject({ kind: 'repair', topic });
  });

  test('a deep drop-off is a stop', () => {
    expect(last('shoulder drop off 4 in').checks.find(({ rule }) => rule === 'drop-off')?.status).toBe('stop');
  });

  test('a repair asked about by itself is explained', () => {
    expect(last('how do I do a hand patch')).toMatchObject({ kind: 'repair', topic: 'hand-patch' });
  });
});

test.each([
  ['defect', 'pothole', ['pothole-depth', 'pothole-width']],
  ['defect', 'drop-off', ['edge-drop']],
  ['fault', 'washboards', ['grader-speed']],
  ['step', 'roll-lift', ['roller-lanes', 'patch-depth']],
])('%s %s is about its figures', (kind, id, figures) => {
  expect(workFigures(knowledge, kind, id)).toEqual(expect.arrayContaining([...figures]));
});
