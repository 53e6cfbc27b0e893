import { table } from '../shapes.ts';

export default table({
  id: 'stopping-sight-metric',
  title: 'stopping sight distance, metric',
  key: { dimension: 'speed', unit: 'km/h' },
  value: { dimension: 'length', unit: 'm' },
  // The policy goes on to 130 km/h; the table for buffers ends at 75 mph, which is 120.7 km/h.
  rows: [
    [20, 20],
    [30, 35],
    [40, 50],
    [50, 65],
    [60, 85],
    [70, 105],
    [80, 130],
    [90, 160],
    [100, 185],
    [110, 220],
    [120, 250],
  ],
  between: 'next row up',
  beyond: 'The table ends below that speed: no buffer is published, so the plan has to give it.',
  because: 'Two and a half seconds to see and react, then braking at 3.4 m/s² on a wet road; rounded up to 5 m.',
  sources: [
    {
      document: 'A Policy on Geometric Design of Highways and Streets',
      issuer: 'AASHTO',
      edition: '7th ed., 2018',
      place: 'Table 3-1, metric',
      seen: 'memory',
    },
    { document: 'the same formula in metric, 0.278 V t + 0.039 V²/a, rounded up to 5 m', seen: 'derived' },
  ],
});
