import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { navyBasic } from '../sources-craft.ts';
import { osha } from '../sources-work.ts';

export default step({
  id: 'order-and-check',
  title: 'order the mix and check the machines',
  because:
    'A machine that quits with a row on the road, or a load short, costs the patch; both are seen the day before.',
  sources: [
    commonPractice,
    osha('601(b)(14), vehicles checked at the start of each shift'),
    navyBasic('ch. 11, rollers'),
  ],
  text: 'Order [[{premix-order} of mix, {order-loads} loads|the mix]][[ and {tack-volume} of tack]], say hot or cold, and when the first truck is due. Look at the weather for the whole day. Go over every machine the day before, and again at the start of the shift.',
  checks: [
    'Grader: edge straight and tight, tires equal, circle not slack, float, steering, brakes, lights, mirrors, backing alarm.',
    'Roller: belt, roll bar, brakes, backing alarm; drums clean, water full, spray and scrapers working.',
    'Tack truck: nozzles at one angle, bar height and pressure even; no water and no other tack left in the tank.',
    'Locates called (811 in the US), and the marks waited for, if anything is cut into, milled or dug.',
    '[[Dry, {min:air-temperature} or more and rising.|Dry, warm enough, and rising.]]',
    'Road owner, dispatch, ambulance, school buses, and the houses and mills on the road have been told.',
  ],
  cautions: ['Start an engine from the seat only; block or lower what is raised before anyone goes under it.'],
  good: 'Mix, tack, trucks and machines are there when the first load is due.',
  rules: ['air-temperature', 'no-rain', 'payload'],
  named: ['order+mix', 'order+check', 'check|checked+machine|grader|roller|equipment', 'pre-trip|walkaround'],
  doneCues: [
    'mix|tack+order what+first|next|now -not -how -how-many',
    'machine|equipment|grader|roller look+over -not',
    'mix|tack+order -not -what -how -how-many',
    'mix+coming -not',
    'machine|equipment|grader|roller|truck checked -not',
    'machine|equipment|grader|roller gone+over -not',
    'machine|equipment ready -not',
  ],
  cues: [
    'how|what check grader|roller|machine|equipment morning|day|start',
    'what look blade|grader|roller|machine morning',
    'start day|shift checklist',
    'checklist start|morning',
    'who call before shut|close',
    'morning before head|leave|roll|start',
    'before head|leave+out|yard',
    'what do|check morning yard|shop|out',
  ],
});
