import { times } from '../../calc/expression.ts';
import dumpSpacing from '../quantities/dump-spacing.ts';
import loadLength from '../quantities/load-length.ts';
import { commonPractice, relation } from '../shapes.ts';

export default relation({
  id: 'dump-spacing',
  title: 'one load after the other',
  finds: dumpSpacing,
  by: times(loadLength),
  bothWays: false,
  plan: true,
  because: 'The next truck begins where the one before runs out.',
  sources: [commonPractice],
  examples: [{ given: { 'load-length': [190, 'ft'] }, finds: [190, 'ft'], source: 'the same length' }],
});
