import { manual } from '../manual.ts';
import offset from '../quantities/offset.ts';
import { limit } from '../shapes.ts';

export default limit({
  id: 'one-lane-at-a-time',
  title: 'one lane closed at a time',
  on: offset,
  cues: [
    'close|closed two|both+lane at+once|same|together',
    'close|closed two|both|2+lane once|one+taper|same',
    'close|closed #length once|one+taper @check',
    'two|both+lane one+taper @check',
  ],
  max: { number: 16, unit: 'ft' },
  breaks: 'caution',
  because: 'Drivers who have to cross two lanes in one taper weave; each lane is given up by itself.',
  sources: [manual('section 6N.11, multilane closures', 'memory')],
  text: {
    ok: '{on} closed is no more than one lane.',
    caution: '{on} closed is more than one lane: each lane has a merging taper of its own, one after the other.',
    cannotTell: 'Tell me the width closed: over {limit} is more than one lane.',
  },
  fix: 'Give me the width of one lane; the plan has to show how far apart the tapers are.',
  examples: {
    holds: { offset: [12, 'ft'] },
    boundary: { offset: [16, 'ft'] },
    breaks: { offset: [24, 'ft'] },
    cannotTell: {},
  },
});
