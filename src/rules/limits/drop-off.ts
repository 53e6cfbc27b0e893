import dropOffMax from '../quantities/drop-off-max.ts';
import edgeDrop from '../quantities/edge-drop.ts';
import { limit } from '../shapes.ts';
import { dropOffHazards, safetyEdge } from '../sources-craft.ts';

export default limit({
  id: 'drop-off',
  title: 'drop-off at the edge',
  on: edgeDrop,
  max: dropOffMax,
  breaks: 'caution',
  stopOver: { number: 3, unit: 'in' },
  because: 'A wheel that drops off and climbs back jerks the car across the road.',
  sources: [safetyEdge('risk grows when significantly over 2 in'), dropOffHazards('repair over 3 in')],
  cues: [
    'drop+off|edge|lip|dropoff #length left|leave -fix -repair -how',
    'drop+off|edge @check',
    'dropoff @check',
    'edge|shoulder drop|low #length',
    'edge+drop',
    'shoulder low #length',
    'lip #length @check',
    'drop #length @check',
    'drop+off edge #length @check',
    'edge|shoulder drop|low|lip #length check -patch',
    'drop|dropoff|lip #length leave|wait|till|until|week|day',
    'drop+off edge #length leave|wait|till|until|week',
    'drop edge|shoulder #length leave|wait|till|until|tonight|overnight|week',
    'edge drop #length dirt|gravel|shoulder|ground',
    'edge|pavement drop #length leave @check',
    'edge #length drop|lower|down leave|check',
    'drop+off|edge|lip|drop #length leave|wait|open overnight|tonight|monday|morning|till|tomorrow|weekend',
  ],
  text: {
    ok: '{on} is not over the {limit} from which a drop-off is flagged. A patch adds its own thickness: measure again after laying.',
    caution: '{on} is over {limit}: flag the drop-off and pull the shoulder up.',
    stop: '{on} is a drop-off that cannot be left: sign it now and bring the shoulder up.',
    cannotTell: 'Tell me how deep the drop at the edge is; from over {limit} it is flagged.',
  },
  fix: 'Sign it, and pull the shoulder up to the new edge; with no material there, bring some.',
  examples: {
    holds: { 'edge-drop': [1, 'in'] },
    boundary: { 'edge-drop': [2, 'in'] },
    breaks: { 'edge-drop': [2.5, 'in'] },
    cannotTell: {},
    also: [
      { facts: { 'edge-drop': [3, 'in'] }, is: 'caution' },
      { facts: { 'edge-drop': [2.25, 'in'] }, is: 'caution' },
      { facts: { 'edge-drop': [3.125, 'in'] }, is: 'stop' },
      { facts: { 'edge-drop': [4, 'in'] }, is: 'stop' },
    ],
  },
});
