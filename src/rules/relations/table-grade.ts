import { lookup } from '../../calc/expression.ts';
import { californiaManual } from '../manual.ts';
import grade from '../quantities/grade.ts';
import tableGrade from '../quantities/table-grade.ts';
import { rowsOf } from '../rows.ts';
import { relation } from '../shapes.ts';
import columns from '../tables/downgrade-columns.ts';

export default relation({
  id: 'table-grade',
  title: 'next steeper column',
  finds: tableGrade,
  by: lookup(grade, rowsOf(columns)),
  bothWays: false,
  because: 'Between two columns the steeper one errs long; an upgrade is taken as level.',
  sources: [californiaManual('Table 6B-2(CA)')],
  examples: [
    {
      given: { grade: [4, '%'] },
      finds: [6, '%'],
      source: 'California MUTCD 2026, Table 6B-2(CA): columns 3, 6 and 9 %',
    },
    { given: { grade: [-5, '%'] }, finds: [0, '%'], source: 'upgrade, taken as level' },
  ],
  noteIfRounded: 'Between two columns of the table the steeper one is used.',
});
