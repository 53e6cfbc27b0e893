import windrowPlace from '../choices/windrow-place.ts';
import { commonPractice, practice } from '../shapes.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default practice({
  id: 'windrow-side',
  title: 'row on the center-line side',
  on: windrowPlace,
  because: 'The first lift is carried outward, and a row in the middle leaves a hump where it lay.',
  sources: [
    bladeSpreading('blade spreading: windrow to the side; from a centre windrow a hump is left'),
    commonPractice,
  ],
  cues: [
    'windrow yellow|centerline|inside|outside|shoulder start|lay|sit|by|along @check',
    'windrow where|side|place -toe -line -pick -left -gave -ran -next -then -now',
    'windrow middle|center|shoulder|inside|outside|edge|side @check',
    'which+side windrow',
    'where windrow go|sit|belong|lie|lay|build|put|start|want',
    'why windrow side|inside',
    'why windrow center|centerline|yellow|inside|side',
  ],
  judged: {
    inside: {
      status: 'ok',
      text: 'Along the center-line side, inside the closed lane, it is where the first lift starts.',
    },
    middle: { status: 'caution', text: 'A row in the middle leaves a hump where it lay.' },
    'shoulder-side': {
      status: 'caution',
      text: 'From the shoulder side the first lift runs inward, mix spills over the edge, and the low side is not filled first.',
    },
    'over-line': { status: 'stop', text: 'A row over the line lies in the lane that carries traffic.' },
  },
  cannotTell:
    'Tell me where the row lies: it belongs along the center-line side of the patch, straight and of one size, inside the closed lane.',
  fix: 'Carry the row over to the center-line side of the patch and size it again, clear of the line.',
});
