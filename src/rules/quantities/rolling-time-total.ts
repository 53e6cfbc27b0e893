import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rolling-time-total',
  title: 'rolling all lifts',
  dimension: 'time',
  units: { us: 'min', metric: 'min' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Every lift is rolled before the next.',
  sources: [geometry],
  cues: [
    'how+long roll|roller|rolled all|total|whole|both|every -#temperature',
    'total roll|rolled time -#temperature',
    'roll+time all|total',
    'all|total|whole|both|every minute|time|hour roll|rolled -#temperature -how-many+time',
  ],
  bare: false,
  asks: 'How long to roll all the lifts?',
  beside: ['rolling-time'],
  usedAt: ['roll-lift', 'final-roll'],
});
