import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'zone-devices',
  title: 'cones or other devices for the whole zone',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because:
    'Every run has a device at both its ends, and where two runs meet they share one: the spaces of all runs, and one more.',
  sources: [geometry],
  cues: [
    'load traffic+control',
    'what load|bring lane|one-lane closed|close|shut -ton -mix -truck',
    'what sign need|use|put -where -order -spacing -apart -@check -first -height',
    'load|bring|truck|need|carry sign|cone|device|traffic zone|closure|flagger|layout -apart -spacing -@check -where -which -order',
    'what load|bring|carry sign|cone|traffic -where -order',
    'list device|sign|cone|load closure|zone|flagger|shoulder|lane -order',
    'list device|sign|cone -order',
    'device+list',
    'load+list -ton',
    'how-many sign zone|closure|flagger|flag|two-lane|shoulder|load|truck',
    'how-many sign load|need|put|carry',
    'how-many cone|device|drum load|zone|whole|closure|flagger|layout|all|altogether|total -taper -tangent -along',
    'how-many cone|device|drum #length patch|work -taper -tangent -along',
    'cone|device|drum whole|entire|all zone|closure|job -taper -tangent',
  ],
  bare: false,
  asks: 'What do I load for traffic control?',
  usedAt: ['traffic-control-up'],
  note: 'Where two runs meet, the device they share is counted once. Carry spares.',
  caution: 'The approved plan and the person in charge of traffic control come first.',
});
