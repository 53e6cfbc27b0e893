import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'lane-edge',
  title: 'machines and the center line',
  because:
    'A row on the center line has its middle inside the lane, so a grader that straddles it has its outer wheel well over the line, and the toe and the hinge reach farther still.',
  sources: [manual('section 6N.07, lane left open')],
  options: [
    {
      id: 'over-with-traffic',
      title: 'over the line while the other lane carries traffic',
      cues: [
        'blade|wheel|drum|windrow|grader|roller|machine over|across|past|cross line|center|centerline|yellow -held -hold -stop -stopped',
        'blade|wheel|drum|windrow|grader|roller|machine other|live|open+lane -leave|left -held -hold -stop -stopped',
        'blade|wheel|tire|drum|windrow|grader|roller|machine|end|tail over|across|past|in|into|hang|swing yellow|centerline|other|open|live -held -hold -stop -stopped -inside',
        'straddle windrow other|tire|wheel|lane',
      ],
    },
    {
      id: 'over-traffic-held',
      title: 'over the line with traffic held at both ends',
      cues: [
        'blade|wheel|drum|windrow|grader|roller|machine over|across|past|cross line|center|centerline|yellow held|hold|stop|stopped',
      ],
    },
    {
      id: 'inside',
      title: 'inside the closed lane',
      cues: [
        'blade|grader|roller|machine stay|inside+inside|lane',
        'stay|stays|keep|kept inside|in lane|line',
        'everything+inside|in lane|line',
      ],
    },
  ],
  question: {
    text: 'Does any wheel, blade end, drum or row cross the line while the other lane carries traffic?',
    ease: 1,
  },
});
