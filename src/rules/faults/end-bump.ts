import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { navyBasic } from '../sources-craft.ts';
import { guideSpecification } from '../sources-work.ts';

export default fault({
  id: 'end-bump',
  title: 'bump at the end',
  seen: 'a bump where the patch begins or ends',
  because: 'A lift that starts at full thickness is a step; a drum that runs off the end rounds it over.',
  sources: [commonPractice, navyBasic('ch. 11, transverse joints'), guideSpecification],
  cues: [
    'bump|hump|ridge|lump end|joint|start|begin|where|patch -every -straight+across',
    'end|start|begin patch|mat high|higher|step|jump|thump|jolt|feel|lip -open -overnight -sign -every -list -all+step -checklist',
    'feel patch|end|start drive|car|truck|hit',
    'step|lip|jolt|thump end|start|begin|where',
    'patch|mat sit|sits high|proud',
    'transition|tie-in rough|bump|bumpy',
    'jolt|thump|bump patch|on|onto',
    'bounce|thump|jolt where|end|start',
    'car bounce patch -mat',
    'lip feel',
  ],
  causes: [
    {
      text: 'no taper: the lift did not start from nothing',
      remedy: 'raise the toe a little at a time, then the heel, going on; lower toe, then heel, coming off',
      source: commonPractice,
    },
    {
      text: 'the end not rolled crosswise',
      remedy: 'roll the end crosswise first, mostly on the old road, then out onto the mix',
      source: navyBasic('ch. 11, transverse joints'),
    },
    {
      text: 'the end feathered over old road instead of keyed into it',
      remedy: 'cut a square key for the end',
      source: guideSpecification,
    },
    {
      text: 'the roller ran off the end of the mat',
      remedy: 'keep the drum on the mat, or run it off onto boards or old road that is flush',
      source: guideSpecification,
    },
  ],
  now: 'Warm: cut the bump with the blade edge or a lute, cross-roll, straightedge. Cold: cut it back square, tack, and lay the end again.',
  nextTime: 'Key the ends; give each lift its taper; roll the ends first.',
  examples: {
    finds: ['you can feel a jolt driving onto the start of the patch', 'there is a step where the mat ends'],
    not: ['ripples all across the mat', 'pile of mix left at the end'],
  },
});
