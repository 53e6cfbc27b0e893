import { manual } from '../manual.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';

export default step({
  id: 'brief-crew',
  title: 'brief the crew',
  because: 'People get hurt where each thought another was watching; ten minutes settle who watches what.',
  sources: [commonPractice, manual('6A.02')],
  text: "Stand everyone off the road and say: today's spots, the lane and the layout; who flags, on which channel; who spots the trucks; where nobody walks; what is hot and what burns; each one's way out; the road, direction and milepost to give in an emergency; and that anyone may stop the job.",
  checks: [
    'Everyone wears high-visibility apparel, hat, boots, gloves and eye protection.',
    'Flaggers are trained, and each end knows who gives the word.',
    'One spotter for trucks, one set of signals.',
    'Water, shade, first aid, and a phone that works here.',
  ],
  cautions: ['Nobody goes behind, between or into the swing of a machine unless its operator has seen his face.'],
  good: 'Ask anyone who spots the trucks and where the way out is: he knows.',
  rules: ['apparel', 'flagger-count', 'backing-spotter'],
  named: ['brief|briefing', 'tailgate+talk|meeting', 'safety+talk|meeting', 'toolbox+talk'],
  doneCues: [
    'did|held|gave talk|meeting|briefing -not -before -how',
    'crew brief',
    'had talk|meeting|briefing -not -before',
    'talk|meeting|briefing done|over|finished -not -before',
    'talk|talked crew|guy',
  ],
  cues: ['tailgate+talk|meeting', 'safety+talk|meeting', 'how|what brief|briefing', 'toolbox+talk', 'what tell crew'],
});
