import { constant, over, roundUp, times } from '../../calc/expression.ts';
import speedUnit from '../choices/speed-unit.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import tableSpeed from '../quantities/table-speed.ts';
import { commonPractice, relation } from '../shapes.ts';

const step = constant(10, 'km/h');

export default relation({
  id: 'table-speed-metric',
  title: 'next 10 km/h up',
  finds: tableSpeed,
  by: times(roundUp(over(postedSpeed, step)), step),
  bothWays: false,
  when: [{ choice: speedUnit, is: ['metric'] }],
  because:
    'Metric limits are posted in steps of 10; the two formulas leave 61 to 69 km/h open, and the next row up errs long.',
  sources: [commonPractice],
  examples: [
    {
      given: { 'posted-speed': [65, 'km/h'], 'speed-unit': 'metric' },
      finds: [70, 'km/h'],
      source: 'next step of 10 above 65',
    },
  ],
  noteIfRounded: 'Between two rows of the table the next one up is used.',
});
