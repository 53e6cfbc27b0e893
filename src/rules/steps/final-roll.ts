import trafficControl from '../choices/traffic-control-state.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { navyBasic, ufcRepair } from '../sources-craft.ts';
import { guideSpecification } from '../sources-work.ts';

export default step({
  id: 'final-roll',
  title: 'final rolling',
  because: 'Unrolled mix ruts and throws stone; a bump found warm is raked out, found cold it is cut out.',
  sources: [navyBasic('ch. 11, joints and rolling'), guideSpecification, ufcRepair('ch. 7, p. 40'), commonPractice],
  text: 'Ends and joints first, crosswise; then low edge first, up to the high side, until no lines stay. [[{roller-lanes} strips, {roller-coverages} times over: {roller-passes} trips.]] Roll down the lumps along the edge. Straightedge and level it while it is warm: loosen and fill a low spot, cut a high one.',
  before: [
    {
      met: { choice: trafficControl, is: ['up'] },
      text: 'Traffic control is up.',
      unmet: 'Put traffic control up first: nobody is on the road before it.',
      rule: 'traffic-control-first',
    },
  ],
  checks: [
    '[[Flush, or at most {max:flush-finish} high at the edges.|Flush with the old road at the edges.]]',
    '[[Under the straightedge no more than {max:straightedge}.]]',
    'Water would run off: the slope matches the road.',
    'The roller is parked off the mat.',
  ],
  cautions: [
    'Belt on, roll bar up. Stay back from a soft edge or a drop-off; no drum over the line while traffic passes; look before you reverse; no riders.',
  ],
  good: 'Ends that cannot be felt, no roller marks, one texture.',
  rules: ['flush-finish', 'straightedge', 'roll-low-to-high', 'roller-speed', 'roller-edge', 'static-thin-lift'],
  named: ['final|finish+roll', 'last+roll'],
  doneCues: [
    'all+done roll -not',
    'roll all+done|finished|through -not',
    'done|finished|through+last|final|finish+roll -not',
    'final|finish+roll done|finished|over|through -not',
    'all rolled -not',
    'rolled+out -not',
    'rolled tight|smooth -not',
  ],
  cues: ['how final|finish+roll', 'roll joint|end crosswise|cross', 'cross-roll', 'when stop|quit roll'],
});
