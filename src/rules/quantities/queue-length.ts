import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'queue-length',
  title: 'queue',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'up', metric: 'up' },
  because: 'The last car must still meet the first sign before it meets the queue.',
  sources: [commonPractice],
  cues: ['queue', 'how+long queue', 'how-far back queue|car|traffic', 'line+car', 'car|traffic back+up'],
  alsoCalled: ['backup', 'line of cars'],
  roles: { after: ['queue', 'backup'], before: ['queue'] },
  setting: ['queue'],
  bare: false,
  asks: 'How far back will traffic stack up?',
  usedAt: ['traffic-control-up'],
  note: 'An average: cars come in bunches, and trucks take more room.',
  caution: 'The queue must end before the first sign, and never across railroad tracks.',
});
