import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { bladeSpreading, everett } from '../sources-craft.ts';

export default step({
  id: 'next-lift',
  title: 'next lift',
  because: 'The row goes back and forth with the lifts; each crossing leaves it where the next one starts.',
  sources: [commonPractice, bladeSpreading('blade spreading'), everett('(4), tack coat')],
  text: '[[Lift {lift} of {lift-count}|The next lift]], once the one below is rolled. The first pass at a flatter angle, so that the row evens out again; then adjust only when you must, finely, and follow the taper already begun. [[Leave {lift-loose} loose.]]',
  also: [
    { on: { lift: 'even' }, text: 'This one brings the mix from the shoulder back toward the center.' },
    { on: { lift: 'odd' }, text: 'This one carries the mix outward again, from the center to the shoulder.' },
  ],
  craft: [
    {
      title: 'float',
      text: "On a level spot let the blade float: it takes up the road's own shape and gathers loose mix. A machine without float needs small corrections by hand.",
    },
    {
      title: 'following the taper',
      text: 'Keep to the taper that the first lift began at both ends; change nothing else there.',
    },
    {
      title: 'keeping short',
      text: 'Mix stays short of the outer edge until the finish, with a wheel of room between row and edge.',
    },
    {
      title: 'row uneven',
      text: 'Where it does not come out even, return the row to the middle and bring it over again.',
    },
  ],
  checks: [
    'The lift below is rolled.',
    'Tack between lifts: laid the same shift, clean and warm, it may be left off if the engineer agrees; cold, dusty, driven on or the next day, a light coat.',
    '[[{tons-left} left to place.]]',
  ],
  cautions: [
    'Inside passes and turnouts swing toward traffic: both flaggers on STOP, nobody in the swing, nothing in the buffer.',
  ],
  good: 'The row is as straight and even after it as before.',
  rules: ['roll-each-lift', 'lift-max', 'lift-min', 'lay-speed', 'fewest-passes', 'machine-inside-lane'],
  named: ['next+lift', 'second|third|fourth|fifth|2nd|3rd|4th|5th+lift', 'middle+lift'],
  doneCues: [
    'next|second|third|fourth|fifth|sixth|seventh|eighth|2nd|3rd|4th|5th+lift down|laid|done|blade -not -how',
    'next|second|third|fourth|fifth|sixth|seventh|eighth|2nd|3rd|4th|5th+lift+in|on -not -how',
    'lift+#number down|laid|done|blade -not -how',
    'lift+#number+in|on -not -how',
  ],
  atCues: [
    'on|start|lay|blade+next|second|third|fourth|fifth|sixth|seventh|eighth|2nd|3rd|4th|5th+lift -how',
    'on+lift+#number',
  ],
  cues: ['how lay|blade|put next|second|third+lift', 'blade float how|when', 'float blade'],
});
