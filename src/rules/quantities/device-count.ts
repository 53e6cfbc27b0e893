import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'device-count',
  title: 'cones or other devices',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'One more than the spaces: a line has a device at both its ends.',
  sources: [geometry],
  cues: [
    'how-many cone|device',
    'need cone|device',
    'cone|device count',
    'how-many cone|device|drum taper|tangent',
    'cone|device #length -apart -spacing -every -how-far -@check -night -tall',
    'cone|device|drum need #length',
    'drum tangent|taper #length -apart -spacing -every -how-far -@check',
  ],
  alsoCalled: ['drums', 'barrels', 'channelizers'],
  roles: { after: ['cone', 'device'], before: [] },
  setting: ['cone', 'device'],
  asks: 'How many cones does it take?',
  beside: ['device-spacing-taper', 'device-spacing-tangent'],
  usedAt: ['traffic-control-up'],
  note: 'Where two lines meet, the device they share is counted once. Carry spares.',
});
