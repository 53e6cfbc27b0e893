import { describe, expect, test } from 'vitest';
import { cueIndex } from '../../src/ask/cue-index.ts';
import { engine, engineOf } from '../../src/ask/engine.ts';
import { cues, rules } from '../../src/ask/laying.ts';
import { vocabularyOf } from '../../src/ask/vocabulary.ts';
import { knowledge, knowledgeOf } from '../../src/rules/knowledge.ts';
import { heads } from '../../src/rules/words.ts';

/** As the build writes it down. */
const kept = <T>(data: T): T => JSON.parse(JSON.stringify(data));

const again = knowledgeOf(knowledge.records, kept(rules));
const engineAgain = engineOf(again, kept(cues));

describe('what the build lays down comes to the same as reading the records afresh', () => {
  test.each(['goals', 'options', 'inWords', 'open'] as const)('the cues of %s', (name) => {
    const [fresh, laid] = [engine[name], engineAgain[name]];
    expect(laid.words).toEqual(fresh.words);
    for (let at = 0; at < fresh.table.cues; at++) expect(laid.entry(at)).toEqual(fresh.entry(at));
    for (const word of [...fresh.words, '@check', 'elephant']) {
      expect(laid.weight(word)).toBe(fresh.weight(word));
      expect(laid.found(word)).toEqual(fresh.found(word));
    }
  });

  test('the words', () => {
    const typed = Object.entries(heads).flat(2);
    const [fresh, laid] = [engine.vocabulary, engineAgain.vocabulary];
    for (const word of [...typed, ...typed.map((word) => word.replace(/(?<=^...)./, '')), 'elephant']) {
      const words = word.split(' ');
      expect(laid.phrase(words, 0)).toEqual(fresh.phrase(words, 0));
      expect(laid.head(word)).toBe(fresh.head(word));
    }
  });

  test('the titles', () => expect([...engineAgain.titles()]).toEqual([...engine.titles()]));

  test('the formulas, turned round for every figure', () => {
    const { methods } = knowledge.network;
    expect(again.network.methods).toHaveLength(methods.length);
    for (const [at, { relation, finds, needs, by }] of again.network.methods.entries())
      expect({ relation, finds, needs, by }).toEqual(methods[at]);
    expect(again.network.usedBy).toEqual(knowledge.network.usedBy);
    expect(again.version).toBe(knowledge.version);
  });

  test('a table of other cues is refused', () => {
    const { table } = cueIndex(() => [{ text: 'how-many ton', of: 1 }]);
    expect(() => cueIndex(() => [], undefined, table).entry(0)).toThrow(RangeError);
  });

  test('a word that cannot be kept is refused', () =>
    expect(() => vocabularyOf({ 'a=b': [] }, () => []).lay()).toThrow(RangeError));
});
