import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'one-lane-length',
  title: 'flagger to flagger',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because: 'All of it is one lane for both ways: what a driver has to clear before the other end may go.',
  sources: [geometry],
  cues: [
    'flagger+flagger',
    'how-far flagger apart -cone -device -drum',
    'one-lane section|stretch how+long|length',
    'between flagger',
  ],
  roles: { after: ['section'], before: ['section'] },
  setting: ['pilot', 'flagger'],
  bare: false,
  asks: 'How far is it from flagger to flagger?',
  beside: ['zone-length', 'buffer-length'],
  usedAt: ['traffic-control-up'],
});
