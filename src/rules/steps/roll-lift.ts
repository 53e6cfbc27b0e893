import trafficControl from '../choices/traffic-control-state.ts';
import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { bladeSpreading, florida, navyBasic, niosh } from '../sources-craft.ts';

export default step({
  id: 'roll-lift',
  title: 'roll the lift',
  because: 'A lift left loose is packed by the tires of the grader, and their tracks come through the finish.',
  sources: [
    navyBasic('ch. 11, rollers'),
    bladeSpreading('each layer rolled before the next'),
    florida('330-10.1'),
    niosh('overturns'),
    commonPractice,
  ],
  text: 'Roll [[lift {lift}|the lift]] before the next one goes on it. Low edge first, then up to the high side: shoulder to crown on a crowned road, inside edge first on a banked curve. [[{roller-lanes} strips, {roller-coverages} times over: {roller-passes} trips.]] [[About {rolling-time}.]] [[At most {max:roller-speed}.]]',
  before: [
    {
      met: { choice: trafficControl, is: ['up'] },
      text: 'Traffic control is up.',
      unmet: 'Put traffic control up first: nobody is on the road before it.',
      rule: 'traffic-control-first',
    },
  ],
  checks: [
    'Drums wet and clean, with water or an approved release, never fuel.',
    'No vibration on a thin or a cool lift.',
    'A steel drum bridges a rut: rubber tires or a narrow drum in it first.',
    'Cold mix that crawls is too wet: air it, then roll.',
    '[[Hot mix: finish within {time-to-roll}, an estimate.]]',
    'Lanes overlap; starts, stops and turns are slow, and on rolled mat.',
  ],
  cautions: [
    'Belt on, roll bar up. Stay back from a soft edge or a drop-off; no drum over the line while traffic passes; look before you reverse; no riders.',
  ],
  good: 'Even and tight, no crawl, no crack, no lines between the strips.',
  rules: [
    'roll-each-lift',
    'roll-low-to-high',
    'roller-overlap',
    'roller-speed',
    'roller-keeps-up',
    'static-thin-lift',
    'drum-bridges-rut',
    'roller-edge',
  ],
  named: ['roll+lift', 'roll -final -finish -down', 'compact|compaction'],
  doneCues: [
    'lift rolled|compacted -not -before',
    'rolled+lift -not -before',
    'rolled -not -before -final -all',
    'roll done|finished|through -not -final',
  ],
  cues: [
    'checklist roll|roller -grader -truck',
    'how roll|compact lift|patch|mat|mix -fast -many -long -times',
    'roll pattern',
    'where start roll',
    'what do between+lift',
    'how roll -fast -many -long',
  ],
});
