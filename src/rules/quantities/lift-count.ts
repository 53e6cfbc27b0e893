import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'lift-count',
  title: 'lifts',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because:
    'Each lift is only as thick as a roller packs and a blade lays true, so the deepest spot takes as many as it holds of those.',
  sources: [commonPractice],
  cues: [
    'how-many lift -ton',
    'lift+count',
    'number lift',
    'how-many pass+mix',
    'lift -roll -rolled -next -loose -thick -thickness -max -min -stone -vibrate -vibration -mean -define -what+lift',
    'lift #length fill|bring|level -roll -rolled -loose',
    'one+lift or two',
  ],
  roles: { after: ['lift'], beside: ['lift'], before: ['lift'] },
  saidAs: [
    { cues: ['two-lift'], number: 2, unit: '1' },
    { cues: ['three-lift'], number: 3, unit: '1' },
    { cues: ['four-lift'], number: 4, unit: '1' },
    { cues: ['single+lift', 'same lift|lane|strip', 'single+shot -tack -spray'], number: 1, unit: '1' },
  ],
  plausible: { min: { number: 1, unit: '1' }, max: { number: 24, unit: '1' } },
  asks: 'How many lifts is that?',
  beside: ['lift-thickness', 'lift-loose', 'lift-mass'],
  usedAt: ['first-lift', 'next-lift', 'finish-lift'],
});
