import { californiaManual } from '../manual.ts';
import { table } from '../shapes.ts';

export default table({
  id: 'stopping-sight-down-6',
  title: 'stopping sight distance on a 6 % downgrade',
  key: { dimension: 'speed', unit: 'mph' },
  value: { dimension: 'length', unit: 'ft' },
  rows: [
    [20, 120],
    [25, 165],
    [30, 215],
    [35, 271],
    [40, 333],
    [45, 400],
    [50, 474],
    [55, 553],
    [60, 638],
    [65, 728],
    [70, 825],
    [75, 927],
  ],
  between: 'next row up',
  beyond: 'The table ends below that speed: no buffer is published, so the plan has to give it.',
  because: 'Going down, gravity takes from the brakes what it adds to the car.',
  sources: [californiaManual('Table 6B-2(CA), credited there to AASHTO 2001, Exhibit 3-2')],
});
