import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'end-taper-length',
  title: 'length of the end taper',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'tenth', metric: 'tenth' },
  because: 'The end rises from nothing to full thickness over this length.',
  sources: [geometry],
  cues: [
    'end+taper -ton -mix',
    'how+long feather|ramp|runout',
    'feather length|long -include|count',
    'ramp length|long',
    'taper patch+end',
    'taper inch -lane -speed',
  ],
  alsoCalled: ['feather', 'run-out', 'ramp'],
  bare: false,
  asks: 'How long is the end taper?',
  beside: ['end-taper-mass', 'end-taper-ratio'],
  usedAt: ['first-lift', 'finish-lift'],
  note: 'Each taper counts half its length at full thickness.',
});
