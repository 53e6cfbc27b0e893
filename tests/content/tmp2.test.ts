import MiniSearch from 'minisearch';
import { test } from 'vitest';
import { cards } from '../../src/ask/cards.generated.ts';
import { engine } from '../../src/ask/engine.ts';
import { read } from '../../src/calc/read/read.ts';
import { sentenceOf } from '../../src/ask/sentence.ts';
import { cardIndex } from '../../src/ask/search/card-index.ts';
import { termsOf } from '../../src/ask/search/terms.ts';
import { pairsOf } from './lines.ts';
test('x', () => {
  const t1 = performance.now();
  const index = cardIndex();
  console.log('build ms', performance.now() - t1);
  const w = (t: {head: string; typed: string}) => Math.max(index.weight(t.head), index.weight(t.typed));
  const telling = (text: string) => { const ts = termsOf(sentenceOf(read(text), engine.vocabulary, engine.small), text); const u = ts.filter((t) => w(t) === 0); const k = ts.filter((t) => w(t) > 0).sort((a, b) => w(b) - w(a));
    const fixed = u.slice(0, 2).flatMap((t) => { const n = index.nearest(t.typed); return n ? [{ head: n, typed: n }] : [t]; });
    return [...k.slice(0, 5 - fixed.length), ...fixed].slice(0, 5); };
  const base = new MiniSearch({ fields: ['title', 'asks', 'text'] }); base.addAll(cards.map((c) => ({ ...c, asks: c.asks.join('. ') })));
  for (const name of process.env.LATER ? ['queries.txt', 'queries-later.txt'] : ['queries.txt']) {
    let h1 = 0, h3 = 0, b1 = 0, b3 = 0; const qs = pairsOf(name);
    for (const { card, text } of qs) {
      const terms = telling(text);
      const all = index.find(terms);
      const found = [...all.filter((f) => !f.id.startsWith('emergency-')), ...all.filter((f) => f.id.startsWith('emergency-'))].slice(0, 6);
      const at = found.findIndex((f) => f.id === card);
      if (at === 0) h1++; if (at >= 0 && at < 3) h3++;
      if (at !== 0 && !name.includes('later')) console.log(`${card} | ${text} [${terms.map((t) => t.head + (t.typed === t.head ? '' : '/' + t.typed)).join(' ')}] => ${found.slice(0, 4).map((f) => `${f.id} ${(f.score).toFixed(2)}`).join(', ')} @${at}`);
      const b = base.search(text).map((r) => r.id as string); if (b[0] === card) b1++; if (b.slice(0, 3).includes(card)) b3++;
    }
    console.log(name, qs.length, 'hit@1', (h1 / qs.length * 100).toFixed(1), 'hit@3', (h3 / qs.length * 100).toFixed(1), 'baseline', (b1 / qs.length * 100).toFixed(1), (b3 / qs.length * 100).toFixed(1));
  }
  const qs = pairsOf('queries.txt').map(({ text }) => text); let t0 = performance.now();
  for (let i = 0; i < 20; i++) for (const t of qs) index.find(telling(t));
  console.log('us all', (performance.now() - t0) * 1000 / (20 * qs.length));
  t0 = performance.now();
  for (let i = 0; i < 20; i++) for (const t of qs) telling(t);
  console.log('us telling', (performance.now() - t0) * 1000 / (20 * qs.length));
});
import { linesOf } from './lines.ts';
test('floor', () => {
  const index = cardIndex();
  const w = (t: {head: string; typed: string}) => Math.max(index.weight(t.head), index.weight(t.typed));
  const telling = (text: string) => { const ts = termsOf(sentenceOf(read(text), engine.vocabulary, engine.small), text); const u = ts.filter((t) => w(t) === 0); const k = ts.filter((t) => w(t) > 0).sort((a, b) => w(b) - w(a));
    const fixed = u.slice(0, 2).flatMap((t) => { const n = index.nearest(t.typed); return n ? [{ head: n, typed: n }] : [t]; });
    return [...k.slice(0, 5 - fixed.length), ...fixed].slice(0, 5); };
  const ok = (f: { share: number; matched: number } | undefined) => f && (f.share >= 0.6 || (f.matched >= 2 && f.share >= 0.4));
  for (const n of ['queries.txt', 'queries-later.txt']) { let bad = 0; for (const { text } of pairsOf(n)) { const f = index.find(telling(text))[0]; if (!ok(f)) { bad++; if (!n.includes('later')) console.log('REJECT', text, f?.share.toFixed(2), f?.matched, f?.score.toFixed(2), telling(text).map((t) => t.typed).join(' ')); } } console.log(n, bad); }
  for (const text of linesOf('not-cards.txt')) { const f = index.find(telling(text))[0]; if (ok(f)) console.log('ACCEPT', text, f?.id, f?.share.toFixed(2), f?.matched, f?.score.toFixed(2), telling(text).map((t) => t.typed).join(' ')); }
});
