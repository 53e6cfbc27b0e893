import { times } from '../../calc/expression.ts';
import drumWidth from '../quantities/drum-width.ts';
import halfDrum from '../quantities/half-drum.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'half-drum',
  title: 'half a drum',
  finds: halfDrum,
  by: times(0.5, drumWidth),
  bothWays: false,
  because: 'The middle of the drum is as far as an overlap makes sense.',
  sources: [geometry],
  examples: [{ given: { 'drum-width': [4.5, 'ft'] }, finds: [27, 'in'], source: 'geometry' }],
});
