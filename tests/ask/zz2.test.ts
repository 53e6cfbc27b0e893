import { test } from 'vitest';
import { work } from '../../src/rules/work.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { figuresIn } from '../../src/ask/clauses.ts';
test('x', () => {
  const rules = new Set([...knowledge.limits.keys(), ...knowledge.practices.keys()]);
  const named = new Map<string, string[]>();
  const put = (r: string | undefined, by: string) => { if (r && !rules.has(r)) named.set(r, [...(named.get(r) ?? []), by]); };
  for (const s of work.steps.values()) { s.rules.forEach((r) => put(r, s.id)); s.before?.forEach((b) => put(b.rule, s.id)); for (const f of s.figures) if (!knowledge.quantities.has(f)) console.log('FIG', s.id, f); for (const t of [s.text, ...s.checks, ...(s.craft ?? []).map((c) => c.text), ...(s.also ?? []).map((a) => a.text), s.good]) for (const n of figuresIn(t)) { const [e, l] = n.split(':'); if (l ? !knowledge.limits.has(l) : n !== 'lift' && !knowledge.quantities.has(n)) console.log('NAME', s.id, n, e); if (!l && n !== 'lift' && !s.figures.includes(n)) console.log('NOTLISTED', s.id, n); } }
  for (const f of work.faults.values()) f.causes.forEach((c) => put(c.rule, f.id));
  for (const r of work.repairs.values()) r.rules.forEach((x) => put(x, r.id));
  console.log('MISSING RULES', JSON.stringify([...named]));
  for (const id of ['turnout-distance','flush-finish','straightedge','placed-before-finish','air-temperature','roller-speed']) { const l = knowledge.limits.get(id); console.log(id, JSON.stringify({ max: l?.max && ('id' in l.max ? l.max.id : l.max), min: l?.min && ('id' in l.min ? l.min.id : l.min), cases: l?.cases?.length })); }
});
