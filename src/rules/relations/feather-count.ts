import { constant } from '../../calc/expression.ts';
import patchEnds from '../choices/patch-ends.ts';
import featherCount from '../quantities/feather-count.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'feather-count',
  title: 'a feather at each end',
  finds: featherCount,
  by: constant(2, '1'),
  plan: true,
  when: [{ choice: patchEnds, is: ['feathered'] }],
  because: 'A patch that is feathered runs out at both ends, unless one is said to be cut square.',
  sources: [commonPractice],
  note: 'Taken as feathered at both ends.',
  examples: [{ given: { 'patch-ends': 'feathered' }, finds: [2, '1'], source: 'two ends' }],
});
