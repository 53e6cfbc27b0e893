import { manual } from '../manual.ts';
import width from '../quantities/open-lane-width.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'open-lane',
  title: 'lane left open',
  on: width,
  min: { number: 10, unit: 'ft' },
  breaks: 'caution',
  because: 'A truck with its mirrors is about 10 ft wide, and its trailer cuts in on a bend.',
  sources: [manual('section 6N.07, guidance')],
  cues: [
    'open+lane narrow|skinny|tight|wide @check',
    'lane check+narrow|skinny|tight',
    'only #length left|open|pass',
    '#length left pass|open|lane',
    'how-many|wide lane left|open',
    'lane left @check #length',
    'open+lane @check #length',
    'car|traffic|truck get|pass by|through #length @check',
    'how-many|wide lane stay|leave open',
  ],
  text: {
    ok: '{on} left open is at least the recommended width, {limit}.',
    caution: '{on} left open is under the {limit} recommended.',
    cannotTell: 'Tell me how wide the lane is that traffic has left: {limit} is recommended.',
  },
  fix: 'Move the work in, close the lane with flaggers, or stop traffic for a few minutes by day.',
  examples: {
    holds: { 'open-lane-width': [11, 'ft'] },
    boundary: { 'open-lane-width': [10, 'ft'] },
    breaks: { 'open-lane-width': [9.5, 'ft'] },
    cannotTell: {},
  },
});
