import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { emergenciesIn } from '../../src/ask/emergency.ts';
import { linesOf, pairsOf } from './lines.ts';
test('x', () => {
  for (const l of readFileSync('/tmp/em3.txt','utf8').split('\n').filter(Boolean)) {
    if (l[0] === '+') { const [c, t] = l.slice(2).split(' | '); const f = emergenciesIn(t); if (f[0] !== c) console.log('MISS', c, '|', t, '=>', f.join()); }
    else { const f = emergenciesIn(l.slice(2)); if (f.length) console.log('FALSE', l, '=>', f.join()); }
  }
  for (const n of ['queries.txt','queries-later.txt']) for (const { card, text } of pairsOf(n)) { const f = emergenciesIn(text); if (f.length) console.log('Q', card, text, f.join()); }
  for (const n of ['questions.txt', 'not-quantities.txt', 'readings.jsonl']) for (const text of readFileSync('tests/corpus/'+n,'utf8').split('\n')) { const f = emergenciesIn(text); if (f.length) console.log('CORPUS', text, f.join()); }
  const t0 = performance.now(); let n = 0;
  for (let i = 0; i < 50; i++) for (const { text } of pairsOf('queries.txt')) { emergenciesIn(text); n++; }
  console.log('us per question', (performance.now() - t0) * 1000 / n);
});
