import { quantity } from '../shapes.ts';

export default quantity({
  id: 'roller-efficiency',
  title: 'share of the time the roller rolls',
  dimension: 'ratio',
  units: { us: '%', metric: '%' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Reversing, watering and waiting take the rest of the hour: a 45-minute hour.',
  sources: [
    {
      document: 'FM 5-434, Earthmoving Operations (now TM 3-34.62)',
      issuer: 'US Department of the Army',
      edition: '15 June 2000',
      place: 'para 11-25: 45 and 50 minute hours',
      seen: 'restated',
    },
  ],
  roles: { after: ['efficiency', 'efficient'], before: ['efficiency', 'at'] },
  bare: false,
  default: { number: 75, unit: '%' },
  plausible: { min: { number: 10, unit: '%' }, max: { number: 100, unit: '%' } },
  beside: ['rolling-time'],
});
