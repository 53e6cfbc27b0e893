import { times } from '../../calc/expression.ts';
import rutLength from '../quantities/rut-length.ts';
import rutSection from '../quantities/rut-section.ts';
import rutVolume from '../quantities/rut-volume.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'rut-volume-one',
  title: 'volume of one rut',
  finds: rutVolume,
  by: times(rutSection, rutLength),
  second: true,
  because: 'One section carried along.',
  sources: [geometry],
  note: 'For one rut; both wheel paths take twice as much.',
  examples: [
    {
      given: { 'rut-section': [0.5, 'ft2'], 'rut-length': [300, 'ft'] },
      finds: [150, 'ft3'],
      source: 'geometry: 0.5 × 300',
    },
  ],
});
