import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { navyBasic } from '../sources-craft.ts';

export default fault({
  id: 'roller-marks',
  title: 'roller marks',
  seen: 'dents, edges or lines of the drum left in the mat',
  because: 'A drum that stands or turns on warm mix sinks in, and mix gone cold no longer gives the line back.',
  sources: [navyBasic('ch. 11, rolling techniques'), commonPractice],
  cues: [
    'roller|drum mark|line|dent|edge|print|imprint -paint -to -center',
    'roller sat|sit|park|parked|stop|stopped|stand|stood dent|mark|mat|sink|low|spot',
    'roller|drum dent|print',
    "line|mark wont|won't|not come|roll|go out|away",
    'dent mat|patch|where roller|stop|park|parked',
    'roller turn|twist mark|mat|scuff',
    'drum|roller edge mark|line',
    'mark mat drum|roller',
  ],
  causes: [
    {
      text: 'stopped or parked on the fresh mat',
      remedy: 'stop, park and fill up on rolled, cold mat',
      source: navyBasic('ch. 11, rolling techniques'),
    },
    {
      text: 'turned or reversed hard on it',
      remedy: 'gradual starts, stops and turns',
      source: navyBasic('ch. 11, rolling techniques'),
    },
    {
      text: 'finish rolling too late',
      remedy: 'roll the lines out while it is warm',
      rule: 'roller-keeps-up',
      source: commonPractice,
    },
    {
      text: 'lanes that do not overlap',
      remedy: 'overlap them',
      rule: 'roller-overlap',
      source: navyBasic('ch. 11, rolling techniques'),
    },
  ],
  now: 'Roll it out while it is warm; gone cold, cut the place out square, or fill the dent on tack.',
  nextTime: 'Park off the mat. Overlap. Finish while it still gives.',
  examples: {
    finds: ['roller sat there and left a dent', 'lines from the drum wont roll out'],
    not: ['scratches behind the blade', 'tire tracks of the grader show through'],
  },
});
