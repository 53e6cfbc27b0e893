import { plus } from '../../calc/expression.ts';
import equipmentCost from '../quantities/equipment-cost.ts';
import jobCost from '../quantities/job-cost.ts';
import laborCost from '../quantities/labor-cost.ts';
import materialCost from '../quantities/material-cost.ts';
import tackCost from '../quantities/tack-cost.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'job-cost',
  title: 'cost of the job',
  finds: jobCost,
  by: plus(materialCost, laborCost, equipmentCost, tackCost),
  because: 'All that is paid for.',
  sources: [commonPractice],
  examples: [
    {
      given: {
        'material-cost': [6800, 'USD'],
        'labor-cost': [2736, 'USD'],
        'equipment-cost': [3720, 'USD'],
        'tack-cost': [240, 'USD'],
      },
      finds: [13496, 'USD'],
      source: 'worked out by hand',
    },
  ],
});
