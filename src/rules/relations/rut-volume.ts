import { times } from '../../calc/expression.ts';
import rutCount from '../quantities/rut-count.ts';
import rutLength from '../quantities/rut-length.ts';
import rutSection from '../quantities/rut-section.ts';
import rutVolume from '../quantities/rut-volume.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rut-volume',
  title: 'volume of several ruts',
  finds: rutVolume,
  by: times(rutSection, rutLength, rutCount),
  keeps: [rutCount],
  because: 'One section carried along, for each rut.',
  sources: [geometry],
  examples: [
    {
      given: { 'rut-section': [0.5, 'ft2'], 'rut-length': [300, 'ft'], 'rut-count': [2, '1'] },
      finds: [300, 'ft3'],
      source: 'geometry: 0.5 × 300 × 2',
    },
  ],
});
