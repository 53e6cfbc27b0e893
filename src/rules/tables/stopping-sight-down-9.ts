import { californiaManual } from '../manual.ts';
import { table } from '../shapes.ts';

export default table({
  id: 'stopping-sight-down-9',
  title: 'stopping sight distance on a 9 % downgrade',
  key: { dimension: 'speed', unit: 'mph' },
  value: { dimension: 'length', unit: 'ft' },
  rows: [
    [20, 126],
    [25, 173],
    [30, 227],
    [35, 287],
    [40, 354],
    [45, 427],
    [50, 507],
    [55, 593],
    [60, 686],
    [65, 785],
    [70, 891],
    [75, 1003],
  ],
  between: 'next row up',
  beyond: 'The table ends below that speed: no buffer is published, so the plan has to give it.',
  because: 'Going down, gravity takes from the brakes what it adds to the car.',
  sources: [californiaManual('Table 6B-2(CA), credited there to AASHTO 2001, Exhibit 3-2')],
});
