import { plus, times } from '../../calc/expression.ts';
import patchLength from '../quantities/patch-length.ts';
import turnRoom from '../quantities/turn-room.ts';
import workLength from '../quantities/work-length.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'work-length',
  title: 'patch and room at both ends',
  finds: workLength,
  by: plus(patchLength, times(2, turnRoom)),
  bothWays: false,
  because: 'Both ends are turned at.',
  sources: [geometry],
  examples: [
    { given: { 'patch-length': [400, 'ft'], 'turn-room': [50, 'ft'] }, finds: [500, 'ft'], source: '400 + 2 × 50' },
  ],
});
