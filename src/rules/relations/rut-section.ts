import { times } from '../../calc/expression.ts';
import rutDepth from '../quantities/rut-depth.ts';
import rutFill from '../quantities/rut-fill.ts';
import rutSection from '../quantities/rut-section.ts';
import rutWidth from '../quantities/rut-width.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rut-section',
  title: 'section of a rut',
  finds: rutSection,
  by: times(rutFill, rutDepth, rutWidth),
  keeps: [rutFill],
  because:
    'A parabola takes two thirds of the box round it; that wheels wear a parabola is a judgement, not a measurement.',
  sources: [geometry],
  examples: [
    {
      given: { 'rut-fill': [200 / 3, '%'], 'rut-depth': [1, 'in'], 'rut-width': [3, 'ft'] },
      finds: [1 / 6, 'ft2'],
      source: 'geometry: 2/3 × 1 × 36 in',
    },
  ],
});
