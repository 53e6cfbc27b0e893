import { manual } from '../manual.ts';
import bufferLength from '../quantities/buffer-length.ts';
import flaggerSight from '../quantities/flagger-sight.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'flagger-sight',
  title: 'flagger seen in time',
  underRule: 'flagger-station',
  on: flaggerSight,
  min: bufferLength,
  breaks: 'caution',
  besideRule: 'flagger-station',
  because: 'The first driver has to see the flagger, believe him and stop.',
  sources: [manual('section 6D.06: seen in time is a standard, the table an option')],
  cues: ['flagger seen|see #length @check', 'see flagger #length', 'sight|view|visible flagger #length'],
  text: {
    ok: '{on} is at least the recommended distance, {limit}.',
    caution:
      '{on} is shorter than the {limit} it takes to stop; drivers shall be able to stop where the flagger wants them.',
    cannotTell: 'Tell me the speed and how far off drivers first see the flagger.',
  },
  fix: 'Move the flagger and the taper back until he and the queue are both seen from farther.',
  examples: {
    holds: { 'flagger-sight': [600, 'ft'], 'posted-speed': [55, 'mph'], 'speed-unit': 'us', grade: [0, '%'] },
    boundary: { 'flagger-sight': [495, 'ft'], 'posted-speed': [55, 'mph'], 'speed-unit': 'us', grade: [0, '%'] },
    breaks: { 'flagger-sight': [300, 'ft'], 'posted-speed': [55, 'mph'], 'speed-unit': 'us', grade: [0, '%'] },
    cannotTell: { 'flagger-sight': [300, 'ft'] },
  },
});
