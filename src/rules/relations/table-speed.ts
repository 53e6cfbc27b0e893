import { constant, over, roundUp, times } from '../../calc/expression.ts';
import speedUnit from '../choices/speed-unit.ts';
import postedSpeed from '../quantities/posted-speed.ts';
import tableSpeed from '../quantities/table-speed.ts';
import { commonPractice, relation } from '../shapes.ts';

const step = constant(5, 'mph');

export default relation({
  id: 'table-speed',
  title: 'next 5 mph up',
  finds: tableSpeed,
  by: times(roundUp(over(postedSpeed, step)), step),
  bothWays: false,
  when: [{ choice: speedUnit, is: ['us'] }],
  because: 'Limits are posted in steps of 5; the two formulas leave 41 to 44 mph open, and the next row up errs long.',
  sources: [commonPractice],
  examples: [
    {
      given: { 'posted-speed': [42, 'mph'], 'speed-unit': 'us' },
      finds: [45, 'mph'],
      source: 'next step of 5 above 42',
    },
    { given: { 'posted-speed': [55, 'mph'], 'speed-unit': 'us' }, finds: [55, 'mph'], source: '55 is a step of 5' },
  ],
  noteIfRounded: 'Between two rows of the table the next one up is used.',
});
