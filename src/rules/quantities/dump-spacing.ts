import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'dump-spacing',
  title: 'distance between dumps',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  rounding: { us: 'whole', metric: 'tenth' },
  because:
    'Each load is dumped where the one before runs out, so that the row is even and nothing has to be carried along the road.',
  sources: [commonPractice],
  cues: [
    'apart dump|load|truck|pile',
    'dump+spacing',
    'spacing dump|load|pile',
    'how-far apart -sign -cone -device -drum -taper',
    'where next dump',
    'spacing|apart dump|load|truck|pile #mass',
    'spacing|apart dump|load|truck|pile #length',
    'dump every',
    'every how-far dump|load',
    'dump how-far -past -beyond',
    'feet between dump|load',
  ],
  roles: { after: ['apart', 'spacing'], before: ['every', 'apart', 'spacing'] },
  setting: ['dump', 'apart', 'spacing'],
  bare: { us: 'ft', metric: 'm' },
  plausible: { min: { number: 3, unit: 'ft' }, max: { number: 2, unit: 'mi' } },
  asks: 'How far apart do we dump?',
  beside: ['truck-count', 'length-per-ton'],
  usedAt: ['spread-premix'],
  note: 'For the whole depth: for one lift alone a load goes farther by as many times as there are lifts. Start where the blade starts.',
  caution: 'One spotter and one signal; wires overhead; bed down before moving; nobody between truck and blade.',
});
