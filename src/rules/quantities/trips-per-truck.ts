import { quantity } from '../shapes.ts';

export default quantity({
  id: 'trips-per-truck',
  title: 'trips a truck makes in the day',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'A trip that is not finished in the day does not count: rounded down.',
  sources: [
    {
      document: 'mix delivery calculation form',
      issuer: 'issuer not shown',
      place: 'trips round down, trucks round up',
      seen: 'read',
    },
  ],
  cues: [
    'how-many trip',
    'trip day|truck|shift how-many -round',
    'trip per+truck',
    'how-many+load truck day|shift|cycle|#time -need',
    'how-many load one|each truck',
  ],
  asks: 'How many trips can a truck make?',
  beside: ['cycle-time', 'work-hours'],
  usedAt: ['order-and-check'],
  enough: 'no-larger',
});
