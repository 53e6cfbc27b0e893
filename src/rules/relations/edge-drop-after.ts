import { plus } from '../../calc/expression.ts';
import edgeDrop from '../quantities/edge-drop.ts';
import edgeDropAfter from '../quantities/edge-drop-after.ts';
import edgeThickness from '../quantities/edge-thickness.ts';
import { geometry, relation } from '../shapes.ts';

export default relation({
  id: 'edge-drop-after',
  title: 'drop-off after the patch',
  finds: edgeDropAfter,
  by: plus(edgeDrop, edgeThickness),
  because: 'The patch stands on the old edge.',
  sources: [geometry],
  examples: [{ given: { 'edge-drop': [2, 'in'], 'edge-thickness': [1, 'in'] }, finds: [3, 'in'], source: 'geometry' }],
});
