import edgeDrop from '../quantities/edge-drop.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'drop-off-schedule',
  title: 'drop-off that wants the shoulder pulled',
  on: edgeDrop,
  max: { number: 2.5, unit: 'in' },
  breaks: 'caution',
  besideRule: 'drop-off',
  because: 'At two and a half inches upright a driver can over-steer coming back.',
  sources: [
    { document: 'Safety Edge', issuer: 'Wisconsin DOT', place: '2.5 in vertical can cause over-steer', seen: 'read' },
  ],
  text: {
    ok: '{on} does not yet put the shoulder on the schedule.',
    caution: '{on} is over {limit}: put the shoulder on the schedule.',
    cannotTell: 'From over {limit} the shoulder is put on the schedule.',
  },
  fix: 'Schedule the shoulder.',
  examples: {
    holds: { 'edge-drop': [2, 'in'] },
    boundary: { 'edge-drop': [2.5, 'in'] },
    breaks: { 'edge-drop': [2.75, 'in'] },
    cannotTell: {},
  },
});
