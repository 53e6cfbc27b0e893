import { manual } from '../manual.ts';
import speedDrop from '../quantities/speed-drop.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'speed-drop',
  title: 'lowered speed limit',
  on: speedDrop,
  max: { number: 10, unit: 'mph' },
  breaks: 'caution',
  because: 'Some drivers slow and some do not; the wider the gap between them, the more they hit each other.',
  sources: [manual('section 6B.01, guidance')],
  cues: [
    'lower|drop|dropping|reduce|cut|knock speed|limit @check',
    'lower|drop|reduce speed|limit how-many',
    'post lower speed|limit',
    'slow+down sign speed|limit',
  ],
  text: {
    ok: 'A drop of {on} is at most the recommended {limit}. Only the road authority sets a limit, never the crew.',
    caution:
      'A drop of {on} is more than the recommended {limit}. Only the road authority sets a limit, never the crew.',
    cannotTell:
      'Only the road authority sets a limit, never the crew; the manual recommends no drop of more than {limit}. Tell me the drop.',
  },
  fix: 'Leave the limit alone, or have the road authority step it down with notice.',
  examples: {
    holds: { 'speed-drop': [5, 'mph'] },
    boundary: { 'speed-drop': [10, 'mph'] },
    breaks: { 'speed-drop': [20, 'mph'] },
    cannotTell: {},
  },
});
