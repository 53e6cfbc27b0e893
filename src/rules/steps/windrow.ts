import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { bladeSpreading, navyBasic } from '../sources-craft.ts';
import { armyGrader } from '../sources-work.ts';

export default step({
  id: 'windrow',
  title: 'build the windrow',
  because:
    'The depth of every lift comes out of the row: where it is thin the mat is thin, and where it bends the mat bends.',
  sources: [
    commonPractice,
    bladeSpreading('blade spreading, thickness fixed by the row'),
    navyBasic('ch. 10, graders, pp. 10-14, 10-15'),
    armyGrader,
  ],
  text: 'Make one straight row of even size. Work it from both ends, and always bring it back to the limits of the patch. Build it toward the middle while you size it, so that nothing goes over the shoulder; the last sizing pass leaves it along the inside, the center-line side, ready to be carried out. [[It holds about {windrow-section}: {windrow-base} wide and {windrow-height} high.]]',
  craft: [
    {
      title: 'sizing',
      text: 'A slight angle[[, about {blade-angle} from square]] and a little down pressure even the row without cutting the old road and picking up lumps.',
    },
    {
      title: 'from both ends',
      text: 'Work it from one end, then from the other, so that neither end grows fat or starves, and bring it back to the limits each time.',
    },
    {
      title: 'turnout',
      text: 'Leaving the patch, turn sharply toward the row as the mix thins out: what is under the blade then lies in line for the next pass[[, within {max:turnout-distance} of the patch]].',
    },
    { title: 'too big to straddle', text: 'If the row does not fit between the wheels, dump and lay it in two goes.' },
    {
      title: 'held up',
      text: 'A row that must wait is pulled tight, so that it sheds water; it never stays in an open lane.',
    },
  ],
  checks: [
    'Set it in from the center line, far enough that the machine straddling it stays in the closed lane; or hold both ends on STOP for the inside passes.',
    'Tickets rule: count the tons to each hundred feet of row, not its looks.',
    'No chunks from the old road in it.',
  ],
  cautions: [
    'Inside passes and turnouts swing toward traffic: both flaggers on STOP, nobody in the swing, nothing in the buffer.',
  ],
  good: 'Straight, even, inside the limits, on the center-line side.',
  rules: ['windrow-side', 'machine-inside-lane', 'turnout-distance'],
  named: ['windrow'],
  doneCues: [
    'windrow built|size|made|ready|straight|done|up|laid -not -how',
    'windrow+in -not',
    'have|got windrow -how -late -wait -waiting',
  ],
  cues: [
    'checklist windrow',
    'how build|make|size|shape|straighten windrow -big -high -tall -wide',
    'how windrow -big -high -tall -wide -many -far',
    'windrow craft|trick|both+end',
  ],
});
