import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { bladeSpreading } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'drag-marks',
  title: 'drag marks',
  seen: 'long scratches or grooves along the finish',
  because: 'Something hard held under the edge plows a groove until it lets go.',
  sources: [commonPractice, bladeSpreading('layers not thinner than 1 1/2 times the largest stone')],
  cues: [
    'drag mark|line|groove|stone|finish -truck -pile',
    'scratch -scratch+rut',
    'line|streak|track mat|surface|patch grader|blade leave|make|put|cut|behind -tack -spray -string -paint',
    'groove -mill -milled',
    'stone caught|stuck|hung under|blade|edge',
    'line|gouge|track long|thin behind blade|finish',
    'score mat|surface|finish|patch',
    'gouge mat|finish|patch|lift|mix',
    'gouge -where -old -road',
    'groove behind|blade',
    'scratch lane|mat|lengthwise',
    'mark lengthwise',
    'stone drag|dragging',
  ],
  causes: [
    {
      text: 'a stone caught under the edge on a thin finish',
      remedy: 'leave enough fine mix on the blade to fill the marks',
      source: commonPractice,
    },
    {
      text: 'a lift thinner than the stone allows',
      remedy: 'lay it thicker, or bring a finer mix[[: at least {lift-min} for this stone]]',
      rule: 'lift-min',
      source: bladeSpreading('layers not thinner than 1 1/2 times the largest stone'),
    },
    {
      text: 'a cold lump stuck under the blade',
      remedy: 'stop, lift, kick it out with the machine standing and the blade down again before anyone goes near',
      source: taught,
    },
    { text: 'a chipped edge', remedy: 'change or turn the edge', source: taught },
  ],
  now: 'Lift, let it go, and bring a little fine mix over the marks before the roller comes.',
  nextTime: 'Keep fines for the finish; look along the edge before the shift.',
  caution: 'Nobody reaches under a blade: machine stopped, blade down on the ground, operator looking at you.',
  examples: {
    finds: ['long scratches in the finish behind the blade', 'a stone is stuck under the edge and cuts a groove'],
    not: ['ripples across the mat', 'rocky streaks with no fines'],
  },
});
