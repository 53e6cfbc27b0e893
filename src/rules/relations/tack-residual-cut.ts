import { constant } from '../../calc/expression.ts';
import surface from '../choices/surface.ts';
import tackResidual from '../quantities/tack-residual.ts';
import { relation } from '../shapes.ts';
import { everett, fromMemory } from '../sources-craft.ts';

export default relation({
  id: 'tack-residual-cut',
  title: 'residual on a cut surface',
  finds: tackResidual,
  by: constant(0.06, 'gal/yd2'),
  when: [{ choice: surface, is: ['cut'] }],
  second: true,
  plan: true,
  because: 'The grooves of a cut surface have more face to cover than a flat one.',
  sources: [
    everett('5-04.3(4): residual 0.02 to 0.10 gal/yd2 on any surface'),
    fromMemory('rates by surface as commonly taught'),
  ],
  examples: [
    { given: { surface: 'cut' }, finds: [0.06, 'gal/yd2'], source: 'the middle of 0.04 to 0.08 as commonly taught' },
  ],
});
