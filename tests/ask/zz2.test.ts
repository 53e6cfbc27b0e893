import { test } from 'vitest';
import * as index from '../../src/rules/index.generated.ts';
import { smallWords } from '../../src/rules/words.ts';
import { workGoals } from '../../src/ask/work-goals.ts';
test('x', () => {
  const small = new Set(smallWords);
  const bad = (cue: string) => cue.split(' ').filter((t) => t.includes('+') && t.replace(/^[?-]/, '').split('+').slice(1).some((place) => place.split('|').every((w) => small.has(w))));
  for (const g of workGoals()) for (const c of g.cues) if (bad(c).length) console.log('MINE', g.kind, g.id, c, bad(c));
  for (const r of index.steps) for (const c of [...r.named, ...r.doneCues, ...(r.atCues ?? [])]) if (bad(c).length) console.log('MINE', r.id, c);
  for (const r of index.repairs) for (const c of r.named) if (bad(c).length) console.log('MINE', r.id, c);
  for (const r of [...index.quantities, ...index.limits, ...index.practices]) for (const c of r.cues ?? []) if (bad(c).length) console.log('THEIRS', r.kind, r.id, c);
  for (const r of index.choices) for (const o of r.options) for (const c of o.cues) if (bad(c).length) console.log('CHOICE', r.id, c);
});
