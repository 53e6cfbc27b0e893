import { plus } from '../../calc/expression.ts';
import advanceLength from '../quantities/advance-length.ts';
import a from '../quantities/sign-spacing-a.ts';
import b from '../quantities/sign-spacing-b.ts';
import c from '../quantities/sign-spacing-c.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'advance-length',
  title: 'the three sign distances together',
  finds: advanceLength,
  by: plus(a, b, c),
  bothWays: false,
  because: 'They follow one another.',
  sources: [geometry],
  examples: [
    {
      given: { 'sign-spacing-a': [1000, 'ft'], 'sign-spacing-b': [1500, 'ft'], 'sign-spacing-c': [2640, 'ft'] },
      finds: [5140, 'ft'],
      source: 'MUTCD 11th ed., Table 6B-1, expressway row: 1,000 + 1,500 + 2,640',
    },
  ],
});
