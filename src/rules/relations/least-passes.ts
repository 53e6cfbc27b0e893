import { times } from '../../calc/expression.ts';
import bladePasses from '../quantities/blade-passes.ts';
import leastPasses from '../quantities/least-passes.ts';
import liftCount from '../quantities/lift-count.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'least-passes',
  title: 'laying passes the width needs',
  finds: leastPasses,
  by: times(bladePasses, liftCount),
  bothWays: false,
  because: 'Every strip once for every lift.',
  sources: [geometry],
  examples: [{ given: { 'blade-passes': [2, '1'], 'lift-count': [3, '1'] }, finds: [6, '1'], source: 'geometry' }],
});
