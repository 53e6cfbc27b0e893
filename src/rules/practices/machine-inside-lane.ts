import edge from '../choices/lane-edge.ts';
import { manual } from '../manual.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'machine-inside-lane',
  title: 'machines stay inside the closed lane',
  on: edge,
  because:
    'A row for a 12 ft lane is about 2.7 ft wide; lying on the center line its middle is 1.4 ft inside, so a grader some 8 ft wide that straddles it has its outer wheel well over the line, with blade toe and hinge beyond it.',
  sources: [commonPractice, manual('section 6N.07, for the lane left open')],
  cues: [
    'blade|wheel|drum|windrow|grader|roller|machine over|across|past|cross line|center|centerline|yellow @check',
    'blade|wheel|drum|windrow|grader|roller|machine other|live|open+lane @check',
    'straddle windrow center|line|centerline',
    'blade|wheel|tire|drum|windrow|grader|roller|machine|end hang|over|swing|stick centerline|center|yellow|other|open',
    'grader|machine|tire|wheel other+lane',
    'stay inside lane|line @check',
    'end|tail|blade|wheel|tire|grader|roller|drum|machine|windrow hang|hangs|stick|over|swing centerline|yellow|center+line car|traffic',
  ],
  judged: {
    'over-with-traffic': {
      status: 'stop',
      text: 'No wheel, blade end, drum or row goes over the line while the other lane carries traffic.',
    },
    'over-traffic-held': {
      status: 'ok',
      text: 'With traffic held at both ends the pass may be made; clear the line again before anyone is let go.',
    },
    inside: { status: 'ok', text: 'Everything stays inside the closed lane while the other lane carries traffic.' },
  },
  cannotTell: 'Nothing crosses the line while the other lane carries traffic. Tell me whether traffic is held.',
  fix: 'Both flaggers on STOP, make the pass, clear the line, release; or set the row in from the line and carry it.',
});
