import { californiaManual } from '../manual.ts';
import { table } from '../shapes.ts';

export default table({
  id: 'stopping-sight-down-3',
  title: 'stopping sight distance on a 3 % downgrade',
  key: { dimension: 'speed', unit: 'mph' },
  value: { dimension: 'length', unit: 'ft' },
  rows: [
    [20, 116],
    [25, 158],
    [30, 205],
    [35, 257],
    [40, 315],
    [45, 378],
    [50, 446],
    [55, 520],
    [60, 598],
    [65, 682],
    [70, 771],
    [75, 866],
  ],
  between: 'next row up',
  beyond: 'The table ends below that speed: no buffer is published, so the plan has to give it.',
  because: 'Going down, gravity takes from the brakes what it adds to the car.',
  sources: [californiaManual('Table 6B-2(CA), credited there to AASHTO 2001, Exhibit 3-2')],
});
