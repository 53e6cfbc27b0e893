import dropOffMax from '../quantities/drop-off-max.ts';
import edgeDropAfter from '../quantities/edge-drop-after.ts';
import { geometry, limit } from '../shapes.ts';
import { safetyEdge } from '../sources-craft.ts';

export default limit({
  id: 'drop-off-after',
  title: 'drop-off after the patch',
  on: edgeDropAfter,
  max: dropOffMax,
  breaks: 'caution',
  besideRule: 'drop-off',
  because: 'The patch adds its thickness to the drop that was there.',
  sources: [safetyEdge('risk grows when significantly over 2 in'), geometry],
  cues: ['drop+off|dropoff|edge after|afterward|once|finish|done @check drop|dropoff'],
  text: {
    ok: '{on} after laying is not over the {limit} from which a drop-off is flagged.',
    caution:
      '{on} after laying is over {limit}: the patch has made a drop-off. Pull the shoulder up today, or sign it.',
    cannotTell: 'The patch adds its thickness to the drop: measure it again after laying.',
  },
  fix: 'Pull the shoulder up the same day, or sign it.',
  examples: {
    holds: { 'edge-drop-after': [1, 'in'] },
    boundary: { 'edge-drop-after': [2, 'in'] },
    breaks: { 'edge-drop-after': [3, 'in'] },
    cannotTell: {},
  },
});
