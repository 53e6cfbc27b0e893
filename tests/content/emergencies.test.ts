import { expect, test } from 'vitest';
import { emergenciesIn } from '../../src/ask/emergency.ts';
import { linesOf, pairsOf } from './lines.ts';

test('x', () => {
  for (const { card, text } of pairsOf('emergencies.txt')) {
    const f = emergenciesIn(text);
    if (f[0] !== card) console.log('MISS', card, '|', text, '=>', f.join());
  }
  for (const text of linesOf('not-emergencies.txt')) {
    const f = emergenciesIn(text);
    if (f.length) console.log('FALSE', text, '=>', f.join());
  }
  expect(1).toBe(1);
});
