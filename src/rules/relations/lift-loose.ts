import { times } from '../../calc/expression.ts';
import liftLoose from '../quantities/lift-loose.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import rollDown from '../quantities/roll-down.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'lift-loose',
  title: 'loose depth to leave',
  finds: liftLoose,
  by: times(liftThickness, rollDown),
  keeps: [rollDown],
  because: 'A lift goes down under the roller by a steady share of its thickness.',
  sources: [napa('7.5')],
  examples: [
    {
      given: { 'lift-thickness': [2, 'in'], 'roll-down': [1.25, '1'] },
      finds: [2.5, 'in'],
      source: 'NAPA handbook 7.5: 2 in rolled needs 2.5 in loose (printed)',
    },
  ],
});
