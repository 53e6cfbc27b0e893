import { times } from '../../calc/expression.ts';
import equipmentCost from '../quantities/equipment-cost.ts';
import equipmentRate from '../quantities/equipment-rate.ts';
import workHours from '../quantities/work-hours.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'equipment-cost',
  title: 'cost of equipment',
  finds: equipmentCost,
  by: times(equipmentRate, workHours),
  because: 'Hours times the rate of all machines.',
  sources: [geometry],
  examples: [
    {
      given: { 'equipment-rate': [465, 'USD/h'], 'work-hours': [8, 'h'] },
      finds: [3720, 'USD'],
      source: 'worked out by hand',
    },
  ],
});
