import ridgePlace from '../choices/ridge-place.ts';
import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';

export default fault({
  id: 'ridge',
  title: 'ridge at the pick-up line',
  seen: 'a line of mix left standing where the blade picks up the row',
  because: 'Mix that slips round the toe is left behind in a line, and the next pass climbs over it.',
  sources: [commonPractice],
  cues: [
    'ridge blade|toe pick|pickup',
    'ridge -tire -wheel -hump -across -crosswise',
    'line|string|strip mix left|leave toe|blade|pass|behind',
    'toe loose|leak|spill',
    'mix|windrow around|round|past|off toe',
    'line|bead between pass|strip',
    'line|string|strip|ridge|bead toe|pick mix|windrow|where|stand -paint',
    'mix stand|standing|left up|proud toe|pick|pass|where',
    'bead mix|toe|edge',
    'pick-up|pickup+line',
    'pick+up+line',
    'windrow toe -old',
    'left+proud toe',
    'string mix toe|pass',
  ],
  causes: [
    {
      text: 'the toe too loose: it does not hold the row',
      remedy: 'set the toe down until it holds the row',
      source: commonPractice,
    },
    {
      text: 'more on the blade than it can carry',
      remedy: 'take less of the row at a time, or close the angle',
      source: commonPractice,
    },
  ],
  now: 'Take it up with one light pass before rolling; rolled in, it stays.',
  nextTime: 'Set the toe before the lift.',
  apart: {
    by: ridgePlace,
    heard: ['ridge'],
    leads: { tracks: { fault: 'wheel-ridges' }, middle: { fault: 'center-hump' } },
  },
  examples: {
    finds: [
      'a string of mix is left behind along the toe',
      'material keeps slipping around the toe and leaving a line',
    ],
    not: ['tire tracks of the grader show through the finish', 'the middle of the lane is higher than the rest'],
  },
});
