import { manual } from '../manual.ts';
import bufferFound from '../quantities/buffer-found.ts';
import bufferLength from '../quantities/buffer-length.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'buffer-length',
  title: 'buffer long enough',
  on: bufferFound,
  min: bufferLength,
  breaks: 'caution',
  because: 'A driver who has missed the taper needs the distance it takes to see, brake and stop.',
  sources: [manual('section 6B.06 and Table 6B-2, an option')],
  cues: [
    'why empty|open|gap|nothing|bare|unused after|past|end|between taper',
    'why empty|gap|unused|bare stretch|space|road|lane|room before|ahead|between crew|worker|work',
    'buffer long+check',
    '#length buffer @check',
    'buffer check+short',
    'without|skip|no buffer @check',
    'empty|clear|open #length taper work|crew @check',
    'left|leave|kept #length empty|clear between+end|taper',
    'space|room|gap between taper work|crew #length',
  ],
  text: {
    ok: '{on} is at least the recommended length, {limit}.',
    caution:
      '{on} is shorter than the {limit} it takes to stop at that speed, which the manual lets the buffer be sized by (may).',
    cannotTell:
      'Tell me how long the buffer is and the speed. Over the end of the table no figure is published: the plan has to give it.',
  },
  fix: 'Lengthen the buffer, or have the person in charge change the plan in writing.',
  examples: {
    holds: { 'buffer-found': [400, 'ft'], 'posted-speed': [45, 'mph'], 'speed-unit': 'us', grade: [0, '%'] },
    boundary: { 'buffer-found': [360, 'ft'], 'posted-speed': [45, 'mph'], 'speed-unit': 'us', grade: [0, '%'] },
    breaks: { 'buffer-found': [300, 'ft'], 'posted-speed': [45, 'mph'], 'speed-unit': 'us', grade: [0, '%'] },
    cannotTell: { 'buffer-found': [300, 'ft'] },
    also: [
      {
        facts: { 'buffer-found': [900, 'ft'], 'posted-speed': [80, 'mph'], 'speed-unit': 'us', grade: [0, '%'] },
        is: 'cannot-tell',
      },
    ],
  },
});
