import { describe, expect, test } from 'vitest';
import { cueIndex } from '../../src/ask/cue-index.ts';
import { index as emergencies } from '../../src/ask/emergency.ts';
import { engine, engineOf } from '../../src/ask/engine.ts';
import { cues, rules } from '../../src/ask/laying.ts';
import { knowledge, knowledgeOf } from '../../src/rules/knowledge.ts';

/** As the build writes it down. */
const kept = <T>(data: T): T => JSON.parse(JSON.stringify(data));

const again = knowledgeOf(knowledge.records, kept(rules));
const engineAgain = engineOf(again, kept(cues));

describe('what the build lays down comes to the same as reading the records afresh', () => {
  test.each(['goals', 'options', 'inWords', 'open'] as const)('the cues of %s', (name) => {
    const [fresh, laid] = [engine[name], engineAgain[name]];
    expect([...laid.byWord]).toEqual([...fresh.byWord]);
    expect(laid.words).toEqual(fresh.words);
    for (let at = 0; at < fresh.table.cues; at++) expect(laid.entry(at)).toEqual(fresh.entry(at));
    for (const word of [...fresh.words, '@check', 'elephant']) expect(laid.weight(word)).toBe(fresh.weight(word));
  });

  test('the cues of emergencies', () => expect(cues.emergencies).toEqual(emergencies.table));

  test('the formulas, turned round for every figure', () => {
    const { methods } = knowledge.network;
    expect(again.network.methods).toHaveLength(methods.length);
    for (const [at, { relation, finds, needs, by }] of again.network.methods.entries())
      expect({ relation, finds, needs, by }).toEqual(methods[at]);
    expect(again.network.usedBy).toEqual(knowledge.network.usedBy);
    expect(again.version).toBe(knowledge.version);
  });

  test('a table of other cues is refused', () => {
    const { table } = cueIndex([{ text: 'how-many ton', of: 1 }]);
    expect(() => cueIndex([], undefined, table)).toThrow(RangeError);
  });
});
