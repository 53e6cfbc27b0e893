import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'water-volume',
  title: 'water to add',
  dimension: 'volume',
  units: { us: 'gal', metric: 'L' },
  rounding: { us: 'up', metric: 'up' },
  because: 'What is not original emulsion in a diluted tank is water.',
  sources: [geometry],
  cues: [
    'how-many+water',
    'how-many water -spray|shoot|shot -residual -rate -set -bar',
    'water add|dilute|need|cut|thin -ton -line -pipe -main -residual -rate -set -bar -spray|shoot|shot',
    'gallon water -residual -rate -set -bar',
  ],
  roles: { after: ['water'] },
  setting: ['water'],
  bare: false,
  asks: 'How much water to add?',
  beside: ['emulsion-volume', 'dilution', 'tack-volume'],
  usedAt: ['tack'],
  caution: 'Dilute only where the buyer allows it, once: water into the emulsion, never into cutback or hot asphalt.',
  enough: 'the-same',
});
