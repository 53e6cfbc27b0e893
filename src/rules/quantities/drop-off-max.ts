import { quantity } from '../shapes.ts';
import { safetyEdge } from '../sources-craft.ts';

export default quantity({
  id: 'drop-off-max',
  title: 'deepest drop-off left without a sign',
  dimension: 'length',
  units: { us: 'in', metric: 'mm' },
  rounding: { us: 'eighths', metric: 'whole' },
  because: 'Past this a tire scrubs along the lip before it climbs, and then jumps.',
  sources: [
    safetyEdge('risk grows when significantly over 2 in'),
    {
      document: 'TM 5-623, Pavement Maintenance Management',
      issuer: 'US Department of the Army',
      edition: 'November 1982',
      place: 'p. B-14: medium from over 2 in',
      seen: 'read',
    },
  ],
  cues: ['max|deepest drop+off|dropoff'],
  bare: false,
  default: { number: 2, unit: 'in' },
});
