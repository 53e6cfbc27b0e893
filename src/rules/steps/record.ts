import { commonPractice } from '../shapes.ts';
import { step } from '../shapes-work.ts';
import { taught } from '../sources-work.ts';

export default step({
  id: 'record',
  title: 'record the day',
  because: 'What went down where, and when the signs stood, is asked for years later and remembered for a day.',
  sources: [commonPractice, taught],
  text: 'Write it while you are there: where, sizes, depths and lifts; tickets and tons[[ ({premix-mass} figured)]], tack gallons; air, road and mix heat; hours; the layout, signs up and signs down; photos; delays, near misses, and what is left to do. Set the day to look again: in a few days, and after the first rain.',
  checks: ['Tons laid over area agree with the depth you meant.', 'Near misses are told, with no names.'],
  cautions: ['Write it off the road.'],
  good: 'Somebody who was not there could find the patch and tell how it was done.',
  rules: [],
  named: ['record|report|paperwork|diary', 'write+up|down'],
  doneCues: ['record|report|paperwork done|finished|written -not', 'wrote|written+up|down'],
  cues: [
    'what report|record|paperwork',
    'what go|goes+in report|record',
    'how fill|write report|record',
    'what write|put report|record|down -rate -#volume -#mass -gallon -ton',
  ],
});
