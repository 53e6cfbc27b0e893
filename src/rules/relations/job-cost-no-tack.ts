import { plus } from '../../calc/expression.ts';
import equipmentCost from '../quantities/equipment-cost.ts';
import jobCost from '../quantities/job-cost.ts';
import laborCost from '../quantities/labor-cost.ts';
import materialCost from '../quantities/material-cost.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'job-cost-no-tack',
  title: 'cost of the job, tack left out',
  finds: jobCost,
  by: plus(materialCost, laborCost, equipmentCost),
  bothWays: false,
  second: true,
  plan: true,
  because: 'Where the cost of the tack is not said it is left out.',
  sources: [commonPractice],
  note: 'Tack is not in it.',
  examples: [
    {
      given: { 'material-cost': [6800, 'USD'], 'labor-cost': [2736, 'USD'], 'equipment-cost': [3720, 'USD'] },
      finds: [13256, 'USD'],
      source: 'worked out by hand',
    },
  ],
});
