import trafficControl from '../choices/traffic-control-state.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { oshaSilica } from '../sources-work.ts';

export default step({
  id: 'sweep',
  title: 'sweep',
  because: 'Tack sticks to what it meets first: on dust it holds the dust, and the patch slides.',
  sources: [commonPractice, oshaSilica],
  text: 'Sweep and blow until the tack will meet stone and old mix, not dust. Mist a dusty road, do not soak it, and let it dry before you spray.',
  before: [
    {
      met: { choice: trafficControl, is: ['up'] },
      text: 'Traffic control is up.',
      unmet: 'Put traffic control up first: nobody is on the road before it.',
      rule: 'traffic-control-first',
    },
  ],
  checks: [
    'A glove wiped over it comes up clean.',
    'No standing water, no frost, no mud.',
    'Holes, cut faces and the feather beyond the limits are clean too.',
  ],
  cautions: ['The cloud is silica, and blinds drivers: hold traffic, cab shut, nobody downwind.'],
  good: 'Stone and old mix show, dry, all over the marked area.',
  rules: ['tack-clean-dry', 'traffic-control-first'],
  named: ['sweep|swept|sweeping|sweeper', 'broom', 'blow+off'],
  doneCues: [
    'swept -not -before',
    'broom|blow|blew+off|out -not -need -before -how',
    'sweep done|finished -not',
    'broom done|finished|through -not -before',
    'clean dry ?now',
    'blew|blow off|all clean',
  ],
  cues: [
    'checklist+sweep|sweeping|broom|sweeper',
    'how|what ready|prep|prepare road|surface|pavement before tack|spray|shoot',
    'how sweep|broom',
    'broom|sweep cloud|dust',
    'sweep wet|water|mist',
  ],
});
