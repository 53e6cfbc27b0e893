import { commonPractice, geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'blade-reach',
  title: 'effective width of the blade',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'hundredth' },
  because: 'Turned off square, a blade covers less road: the sharper the angle, the narrower the strip.',
  sources: [geometry, commonPractice],
  cues: [
    'effective+width',
    'blade cover|reach',
    'blade width|swath -pass -strip',
    'how+wide blade',
    'effective width',
    'effective blade',
    'effective reach|swath|cover',
    'swath',
  ],
  alsoCalled: ['swath', 'swept width', 'effective blade'],
  bare: false,
  asks: 'How wide does the blade cover?',
  beside: ['blade-angle', 'blade-passes'],
  usedAt: ['first-lift'],
});
