import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';

export default fault({
  id: 'pile-at-end',
  title: 'pile at the end',
  seen: 'a heap of mix left where the patch ends',
  because:
    'A row with more in it than the width and depth can take has to go somewhere, and the blade carries it to the end.',
  sources: [commonPractice],
  cues: [
    'pile|heap end|left|leftover|over|stuck|extra -old -fall -sit -stock -haul',
    'check+much+mix|windrow end|left|over',
    'mix|windrow left over|end|far|yet',
    'leftover|extra mix|windrow|ton|pile -order -haul',
    'push pile|heap end',
    'windrow check+big|much',
    'glob|gob end|left|where',
    'heap|pile finish|end',
    'extra+mix end',
  ],
  causes: [
    {
      text: 'a row too big for the width left',
      remedy: 'size the next one from the tons; dump less',
      rule: 'material-run-out',
      source: commonPractice,
    },
    {
      text: 'a lift laid thinner than it was figured',
      remedy: 'check the loose depth behind the blade[[: {lift-loose}]]',
      source: commonPractice,
    },
  ],
  now: 'Work a small one back into the mat. A big one goes to drive tie-ins, to hand patches in the zone, or back to the yard: never dragged down the road, never into the ditch.',
  nextTime: 'Count tons to the hundred feet of row; let it give out just short of the end.',
  examples: {
    finds: [
      'got a heap of material left at the far end',
      'row was too big, there is a big pile at the end of the patch',
    ],
    not: ['we ran out before the end of the patch', 'bump where the patch ends'],
  },
});
