import board from '../choices/arrow-board.ts';
import { manual } from '../manual.ts';
import { practice } from '../shapes.ts';

export default practice({
  id: 'arrow-board-mode',
  title: 'what the arrow board shows',
  on: board,
  because: 'An arrow tells a driver to move over; on a two-lane road that is into the other traffic.',
  sources: [manual('sections 6N.01 and 6N.06')],
  cues: ['arrow @check', 'arrow+board', 'arrow two-lane|shoulder|flagger'],
  judged: {
    'pointing-two-lane': {
      status: 'caution',
      text: 'On a two-lane road and beside shoulder work an arrow board shows the caution mode only, never an arrow (shall, for shoulder work).',
    },
    'caution-mode': { status: 'ok', text: 'The caution mode is what a two-lane road or shoulder work takes.' },
    'at-merging-taper': {
      status: 'ok',
      text: 'At the merging taper of a closed lane the arrow points the way to the open one.',
    },
  },
  cannotTell: 'Tell me the road: an arrow points only where a lane of a multilane road is closed.',
  fix: 'Switch it to the caution mode.',
});
