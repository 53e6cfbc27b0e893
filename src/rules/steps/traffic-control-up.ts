import layoutKind from '../choices/layout-kind.ts';
import { manual } from '../manual.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { taught } from '../sources-work.ts';

export default step({
  id: 'traffic-control-up',
  title: 'traffic control up',
  because:
    'A driver needs the warning before he meets the work; so the farthest sign goes out first, and people go in last.',
  sources: [manual('6A.03, 6B.04 to 6B.08, chapter 6D'), taught, commonPractice],
  text: 'Set up by the approved plan, in the direction of travel: the farthest advance sign first, then the next ones, the taper, the buffer, the work space, the downstream end. [[Nearest sign {sign-spacing-a} ahead.]] [[Buffer {buffer-length}.]] Flaggers, where they hold traffic, stand where drivers see them, each with a way out, and talk to each other before man or machine goes into the lane.',
  also: [
    {
      on: { choice: { choice: layoutKind, is: ['flaggers'] } },
      text: '[[Sign to sign {zone-length}.]]',
    },
    {
      on: { choice: { choice: layoutKind, is: ['lane-closed'] } },
      text: 'The arrow board stands on the shoulder where the taper begins; on a divided road signs stand on both sides. [[Farthest sign to the end of the closure {closure-length}.]]',
    },
    {
      on: { choice: { choice: layoutKind, is: ['shoulder'] } },
      text: '[[Farthest sign to the end of the work {shoulder-zone-length}.]]',
    },
  ],
  checks: [
    'Drive through it once from both ends, as a stranger would see it.',
    'Room for the grader to turn and the roller to run off lies inside the work space; the buffer stays empty.',
    'The line of waiting cars ends before the first sign, and never on a railroad crossing.',
    'Side roads and drives have their warning.',
  ],
  cautions: ['Cones stop nobody: never turn your back on traffic, and keep people and machines out of the buffer.'],
  good: 'Drivers slow down before they see the work.',
  rules: [
    'traffic-control-first',
    'flagger-count',
    'flagger-station',
    'sign-spacing',
    'taper-length',
    'buffer-length',
    'device-spacing',
    'cone-height',
    'apparel',
  ],
  named: [
    'traffic+control -down',
    'sign|cone+up|out',
    'sign|cone go+up|out',
    'lane closed|close|shut|shutting',
    'set+up+traffic|sign|cone',
    'close+lane',
  ],
  doneCues: [
    'traffic+control up|set|place -not -before -until -when -how',
    'sign|cone up|out|set -not -down -pick -cover -before',
    'lane closed|shut -not -before -until -when -how',
    'flagger place|station|out -not -where',
  ],
  cues: [
    'before foot|step road|lane|pavement|highway',
    'before anybody|anyone|somebody work|foot|walk|step road|lane|highway',
    'how set traffic+control|sign|cone -spacing -far -space -taper',
    'order sign|device|cone set|up|first',
    'which sign first',
    'what first sign|cone up',
    'step put|putting|set sign|cone up|out',
    'step traffic+control',
  ],
});
