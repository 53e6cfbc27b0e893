import { constant } from '../../calc/expression.ts';
import surface from '../choices/surface.ts';
import tackResidual from '../quantities/tack-residual.ts';
import { relation } from '../shapes.ts';
import { everett, fromMemory } from '../sources-craft.ts';

export default relation({
  id: 'tack-residual-fresh-lift',
  title: 'residual on a fresh lift',
  finds: tackResidual,
  by: constant(0.03, 'gal/yd2'),
  when: [{ choice: surface, is: ['fresh-lift'] }],
  second: true,
  plan: true,
  because: 'A fresh lift is still rich and clean: a light coat will do.',
  sources: [
    everett('5-04.3(4): residual 0.02 to 0.10 gal/yd2 on any surface'),
    fromMemory('rates by surface as commonly taught'),
  ],
  examples: [
    {
      given: { surface: 'fresh-lift' },
      finds: [0.03, 'gal/yd2'],
      source: 'the middle of 0.02 to 0.05 as commonly taught',
    },
  ],
});
