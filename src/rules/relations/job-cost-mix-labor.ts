import { plus } from '../../calc/expression.ts';
import jobCost from '../quantities/job-cost.ts';
import laborCost from '../quantities/labor-cost.ts';
import materialCost from '../quantities/material-cost.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'job-cost-mix-labor',
  title: 'cost of the mix and the crew',
  finds: jobCost,
  by: plus(materialCost, laborCost),
  bothWays: false,
  second: true,
  third: true,
  plan: true,
  because: 'Only what was given a price is counted.',
  sources: [commonPractice],
  note: 'Mix and labor alone: no machine and no tack is in it. Tell what the machines cost an hour to have them counted.',
  examples: [
    {
      given: { 'material-cost': [18600, 'USD'], 'labor-cost': [1260, 'USD'] },
      finds: [19860, 'USD'],
      source: 'worked out by hand: 18,600 + 1,260',
    },
  ],
});
