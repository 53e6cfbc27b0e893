import { test } from 'vitest';
import * as index from '../../src/rules/index.generated.ts';
test('x', () => {
  const mine = ['steps','faults','defects','repairs'] as const;
  for (const k of mine) for (const r of (index as any)[k]) for (const field of ['cues','doneCues','named','atCues']) for (const c of (r[field] ?? [])) for (const t of c.split(' ')) {
    const parts = t.replace(/^[?-]/,'').split('+');
    if (parts.length > 1 && parts.some((p: string) => p.includes('|'))) console.log(`${r.kind}/${r.id} ${field} :: ${t}`);
  }
  for (const r of (index as any).choices) if (['tack-state','weather-state','traffic-control-state','base-state','water-state','recurring','defect-place','traffic-level','crack-state','defect-extent','rut-edges','edge-break-state','wave-place','chunk-look','soft-place','ridge-place','streak-look','crack-look','stick-place','ravel-state'].includes(r.id)) for (const o of r.options) for (const c of o.cues) for (const t of c.split(' ')) { const parts = t.split('+'); if (parts.length>1 && parts.some((p: string)=>p.includes('|'))) console.log(`choice/${r.id} ${o.id} :: ${t}`); }
});
