import { quantity } from '../shapes.ts';

export default quantity({
  id: 'straightedge-length',
  title: 'straightedge',
  dimension: 'length',
  units: { us: 'ft', metric: 'm' },
  because:
    'A gap is measured to the high points on either side: a longer edge spans more of them and finds a deeper low, and humps beside a rut add to it.',
  sources: [
    {
      document: 'Guide to Asset Management, Part 5C: Rutting',
      issuer: 'Austroads',
      edition: '2007',
      place: 'abstract: 2 m straightedge preferred',
      seen: 'read',
    },
  ],
  roles: { after: ['straightedge', 'board', 'edge'], before: ['straightedge', 'board'] },
  bare: { us: 'ft', metric: 'm' },
  plausible: { min: { number: 3, unit: 'ft' }, max: { number: 20, unit: 'ft' } },
  note: 'Note the length of straightedge the readings were taken under: a longer one finds more.',
});
