import { manual } from '../manual.ts';
import { table } from '../shapes.ts';

export default table({
  id: 'stopping-sight',
  title: 'stopping sight distance',
  key: { dimension: 'speed', unit: 'mph' },
  value: { dimension: 'length', unit: 'ft' },
  rows: [
    [20, 115],
    [25, 155],
    [30, 200],
    [35, 250],
    [40, 305],
    [45, 360],
    [50, 425],
    [55, 495],
    [60, 570],
    [65, 645],
    [70, 730],
    [75, 820],
  ],
  between: 'next row up',
  beyond: 'The table ends below that speed: no buffer is published, so the plan has to give it.',
  because: 'Two and a half seconds to see and react, then braking at 11.2 ft/s² on a wet road; rounded up to 5 ft.',
  sources: [
    manual('Table 6B-2'),
    {
      document: 'A Policy on Geometric Design of Highways and Streets',
      issuer: 'AASHTO',
      edition: '7th ed., 2018',
      place: 'section 3.2.2, the formula',
      seen: 'restated',
    },
  ],
});
