import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rut-volume',
  title: 'volume of the ruts',
  dimension: 'volume',
  units: { us: 'ft3', metric: 'm3' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'The slice goes on along the rut, once for each rut.',
  sources: [geometry],
  cues: ['rut volume', 'how-many cubic rut', 'cubic rut|wheelpath', 'volume rut|wheelpath'],
  bare: false,
  asks: 'How many cubic feet in the ruts?',
  beside: ['premix-mass', 'rut-section'],
});
