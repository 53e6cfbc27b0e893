import { times } from '../../calc/expression.ts';
import crownBuild from '../quantities/crown-build.ts';
import crownWedgeDepth from '../quantities/crown-wedge-depth.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'crown-wedge-depth',
  title: 'average depth of a wedge',
  finds: crownWedgeDepth,
  by: times(0.5, crownBuild),
  because: 'From nothing to the full build-up.',
  sources: [geometry],
  examples: [{ given: { 'crown-build': [1.056, 'in'] }, finds: [0.528, 'in'], source: 'geometry' }],
});
