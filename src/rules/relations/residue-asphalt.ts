import { constant } from '../../calc/expression.ts';
import tackKind from '../choices/tack-kind.ts';
import residue from '../quantities/residue.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'residue-asphalt',
  title: 'residue of straight asphalt',
  finds: residue,
  by: constant(100, '%'),
  when: [{ choice: tackKind, is: ['asphalt'] }],
  plan: true,
  because: 'Straight asphalt holds no water: all of it stays.',
  sources: [geometry],
  examples: [{ given: { 'tack-kind': 'asphalt' }, finds: [100, '%'], source: 'by definition' }],
});
