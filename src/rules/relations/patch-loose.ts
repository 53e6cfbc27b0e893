import { times } from '../../calc/expression.ts';
import patchDepth from '../quantities/patch-depth.ts';
import patchLoose from '../quantities/patch-loose.ts';
import rollDown from '../quantities/roll-down.ts';
import { relation } from '../shapes.ts';
import { napa } from '../sources-craft.ts';

export default relation({
  id: 'patch-loose',
  title: 'loose depth of the whole patch',
  finds: patchLoose,
  by: times(patchDepth, rollDown),
  bothWays: false,
  plan: true,
  because: 'The roller takes it down to the depth wanted.',
  sources: [napa('7.5')],
  examples: [
    {
      given: { 'patch-depth': [2, 'in'], 'roll-down': [1.25, '1'] },
      finds: [2.5, 'in'],
      source: 'NAPA handbook 7.5: 2 in need 2.5 in loose',
    },
  ],
});
