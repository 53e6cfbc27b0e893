import { geometry, quantity } from '../shapes.ts';
import { rollerArticle } from '../sources-craft.ts';

export default quantity({
  id: 'roller-lanes',
  title: 'roller lanes across the width',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'Width and overhang, covered by lanes of a drum less its overlap; the first lane gives up no overlap.',
  sources: [rollerArticle('12 ft lane: 4 lanes of a 4.5 ft drum, 3 of 5.5 ft, 2 of 7 ft'), geometry],
  cues: [
    'how-many roller+lane',
    'roller lane|strip|lap',
    'how-many lane|strip roll|roller|drum|rolled',
    'drum cover',
    'drum|roller lane|strip|lap -@check -over',
    'how-many lap',
    'lap across|wide|need',
    'lane drum|roller',
    'drum lane -@check',
    'lap -#figure -mark',
  ],
  alsoCalled: ['roller strips', 'laps across'],
  bare: { us: '1', metric: '1' },
  roles: { after: ['lane', 'strip', 'lap'], before: [] },
  asks: 'How many roller lanes?',
  beside: ['roller-coverages', 'roller-passes'],
  usedAt: ['roll-lift', 'final-roll'],
  caution: 'Overhang only on a firm, level, supported edge; on a soft edge or a drop-off stay back. Belt on.',
});
