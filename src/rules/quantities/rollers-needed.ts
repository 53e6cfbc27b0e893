import { quantity } from '../shapes.ts';

export default quantity({
  id: 'rollers-needed',
  title: 'rollers needed',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'Mat that no roller reaches in time is never packed: rollers are matched to what is laid.',
  sources: [
    {
      document: 'UFGS 02749, hot-mix guide specification',
      issuer: 'US Department of Defense',
      place: 'compaction: rollers enough for the plant output',
      seen: 'read',
    },
    {
      document: 'FM 5-434, Earthmoving Operations (now TM 3-34.62)',
      issuer: 'US Department of the Army',
      edition: '15 June 2000',
      place: 'para 11-26: rounded up',
      seen: 'restated',
    },
  ],
  cues: ['how-many roller', 'roller need'],
  bare: { us: '1', metric: '1' },
  asks: 'How many rollers do I need?',
  beside: ['rolling-rate'],
  usedAt: ['order-and-check'],
});
