import { over } from '../../calc/expression.ts';
import liftLoose from '../quantities/lift-loose.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import rollDown from '../quantities/roll-down.ts';
import { relation } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default relation({
  id: 'roll-down',
  title: 'roll-down measured',
  finds: rollDown,
  by: over(liftLoose, liftThickness),
  bothWays: false,
  said: [liftLoose, liftThickness],
  because: 'Two depths at one spot, before and after the roller, are the factor of this mix under this roller.',
  sources: [ufcRepair('p. 9')],
  note: 'Measured: this replaces the rule of thumb for the job.',
  examples: [
    {
      given: { 'lift-loose': [4.25, 'in'], 'lift-thickness': [3, 'in'] },
      finds: [1.417, '1'],
      within: 1e-3,
      source: 'UFC 3-270-01, p. 9: 4 1/4 in loose rolls to 3 in',
    },
  ],
});
