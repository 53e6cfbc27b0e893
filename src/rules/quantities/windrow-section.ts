import { geometry, quantity } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default quantity({
  id: 'windrow-section',
  title: 'end area of the row',
  dimension: 'area',
  units: { us: 'ft2', metric: 'm2' },
  rounding: { us: 'hundredth', metric: 'thousandth' },
  because: 'The blade only moves what the row holds: the size of the row is the thickness of the lift.',
  sources: [bladeSpreading('blade spreading: thickness is fixed by the volume in the windrow'), geometry],
  cues: [
    'windrow size|section|big',
    'how+big windrow',
    'windrow+area',
    'end+area windrow',
    'section windrow',
    'windrow section|size|big all|whole|one|single',
    'windrow size|big #length',
    'windrow section #length',
  ],
  alsoCalled: ['windrow size', 'cross section of the row'],
  roles: { after: ['windrow', 'section'], before: ['windrow', 'section'] },
  setting: ['windrow'],
  bare: false,
  plausible: { min: { number: 0.02, unit: 'ft2' }, max: { number: 40, unit: 'ft2' } },
  asks: 'How big should the row be?',
  beside: ['windrow-mass-per-100ft', 'windrow-height', 'windrow-base'],
  usedAt: ['windrow'],
  note: 'A heap lies looser than a laid mat, so a row this size holds a little less: go by the tons in each 100 ft.',
  enough: 'the-same',
});
