import { commonPractice, quantity } from '../shapes.ts';
import { napa, ufcRepair } from '../sources-craft.ts';

export default quantity({
  id: 'roll-down',
  title: 'roll-down, loose to rolled',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'hundredth', metric: 'hundredth' },
  because:
    'A paver screed packs the mat before the roller comes; bladed mix has had no screed and lies looser, so it goes down farther.',
  sources: [
    napa('7.5: a quarter more behind a paver'),
    ufcRepair('p. 9: 4 1/4 in loose for 3 in by hand'),
    commonPractice,
  ],
  cues: [
    'roll-down -#figure',
    'what roll-down',
    'how-many squeezed|squish|shrink|squash|mash -#figure',
    'how-many pack|come|go+down roll|rolled -#figure',
    'compaction loss|los|factor -#length',
  ],
  roles: { after: ['roll-down', 'factor'], before: ['roll-down', 'factor'] },
  default: { number: 1.25, unit: '1', low: 1.25, high: 1.4 },
  plausible: { min: { number: 1, unit: '1' }, max: { number: 1.7, unit: '1' } },
  asks: 'How much does it roll down?',
  note: 'Measure it on the first strip: depth before rolling over depth after; that figure replaces this one.',
});
