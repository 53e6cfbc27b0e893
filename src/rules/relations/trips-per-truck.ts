import { over, roundDown } from '../../calc/expression.ts';
import cycleTime from '../quantities/cycle-time.ts';
import tripsPerTruck from '../quantities/trips-per-truck.ts';
import workHours from '../quantities/work-hours.ts';
import { relation } from '../shapes.ts';

export default relation({
  id: 'trips-per-truck',
  title: 'whole trips in the day',
  finds: tripsPerTruck,
  by: roundDown(over(workHours, cycleTime)),
  bothWays: false,
  because: 'A trip not finished does not count.',
  sources: [
    {
      document: 'mix delivery calculation form',
      issuer: 'issuer not shown',
      place: 'trips round down, trucks round up',
      seen: 'read',
    },
  ],
  examples: [
    {
      given: { 'work-hours': [8, 'h'], 'cycle-time': [66, 'min'] },
      finds: [7, '1'],
      source: 'worked out by hand: 480 ÷ 66 is 7.27',
    },
  ],
});
