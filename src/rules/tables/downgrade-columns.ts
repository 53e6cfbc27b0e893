import { californiaManual } from '../manual.ts';
import { table } from '../shapes.ts';

export default table({
  id: 'downgrade-columns',
  title: 'columns of the downgrade table',
  key: { dimension: 'ratio', unit: '%' },
  value: { dimension: 'ratio', unit: '%' },
  rows: [
    [0, 0],
    [3, 3],
    [6, 6],
    [9, 9],
  ],
  between: 'next row up',
  beyond: 'No distance is published for a steeper downgrade: the plan has to give it.',
  because: 'Between two columns the steeper one errs long.',
  sources: [californiaManual('Table 6B-2(CA)')],
});
