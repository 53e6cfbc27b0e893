import { test } from 'vitest';
import * as index from '../../src/rules/index.generated.ts';
import { readCue, wordsOf } from '../../src/ask/cue.ts';
import { workGoals } from '../../src/ask/work-goals.ts';
import { heads } from '../../src/rules/words.ts';
const mineChoices = ['defect','tack-state','weather-state','traffic-control-state','base-state','water-state','recurring','defect-place','traffic-level','crack-state','defect-extent','rut-edges','edge-break-state','wave-place','chunk-look','soft-place','ridge-place','streak-look','crack-look','stick-place','ravel-state'];
const plain = (c: string) => wordsOf(readCue(c)).filter((w) => !/^[@#]/.test(w));
test('x', () => {
  const ix = index as any;
  const mine = new Map<string, Set<string>>();
  const put = (w: string, by: string) => { if (!mine.has(w)) mine.set(w, new Set()); mine.get(w)!.add(by); };
  for (const g of workGoals()) for (const c of g.cues) for (const w of plain(c)) put(w, `${g.kind}/${g.id}`);
  for (const k of ['steps','faults','defects','repairs']) for (const r of ix[k]) for (const f of ['named','doneCues','atCues']) for (const c of r[f] ?? []) for (const w of plain(c)) put(w, `${r.kind}/${r.id}`);
  const others = new Set<string>(Object.keys(heads));
  for (const k of ['quantities','limits','practices']) for (const r of ix[k]) { for (const c of r.cues ?? []) plain(c).forEach((w) => others.add(w)); for (const w of [...(r.roles?.after ?? []), ...(r.roles?.before ?? []), ...(r.setting ?? [])]) others.add(w); }
  for (const r of ix.choices) for (const o of r.options) for (const c of o.cues) for (const w of plain(c)) mineChoices.includes(r.id) ? put(w, `choice/${r.id}`) : others.add(w);
  const all = new Set([...others, ...mine.keys()]);
  const stems = (w: string) => { const out: string[] = []; for (const e of [/s$/, /es$/, /ing$/, /ed$/, /d$/]) { const s = w.replace(e, ''); if (s === w || s.length < 3) continue; for (const t of ['', 'e']) if (all.has(s + t)) out.push(s + t); if (/(.)\1$/.test(s) && all.has(s.slice(0, -1))) out.push(s.slice(0, -1)); } return out; };
  for (const [w, by] of [...mine].sort()) if (!others.has(w)) { const s = stems(w); if (s.length) console.log(`${s.some((x) => others.has(x)) ? 'CONFLICT' : 'own'} ${w} -> ${s.join(',')} :: ${[...by].slice(0, 6).join(' ')}`); }
});
