import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'hot-section-length',
  title: 'how far a hot lift may run ahead of the roller',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'All the trips over a stretch must be done before it is cold.',
  sources: [geometry],
  cues: [
    'how-far ahead|ahead-of roller',
    'how-far lay roller',
    'how-many lay before roll|roller|rolled',
    'hot+section',
    'stay+ahead|ahead-of roller',
    'run+ahead|ahead-of roller',
  ],
  bare: false,
  plausible: { min: { number: 3, unit: 'ft' }, max: { number: 5, unit: 'mi' } },
  asks: 'How far ahead of the roller can we lay?',
  beside: ['time-to-roll', 'roller-passes'],
  usedAt: ['first-lift', 'roll-lift'],
  note: 'An estimate, as the time to roll is.',
  enough: 'no-larger',
});
