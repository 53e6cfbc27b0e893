import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { armyPci } from '../sources-work.ts';

export default fault({
  id: 'ponding',
  title: 'ponding',
  seen: 'water that stands on the patch or against its edge',
  because: 'A patch without the slope of the road, or a shoulder above it, has no way out for the water.',
  sources: [armyPci('appendix B, depression'), commonPractice],
  cues: [
    'puddle remain|stand|sit|stay|left|form|formed|collect patch|mat|section|lane|road|it -tack -spray -base -before -ditch',
    'shallow puddle',
    'puddle after|since|follow rain|shower|storm -tack -before -ditch',
    'birdbath',
    'pond',
    'puddle|water stand|stands|sit|sits|stay|hold|collect|puddle patch|mat|low -base -ditch -tack -before -spray -shoot -shot',
    'puddle patch|mat|after|rain -tack',
    'patch|mat hold|holding water',
    "water not|wont|won't|doesn't run|drain|get off|patch|mat",
    'low+spot patch|mat|water|finish',
    'mat|patch not+drain',
    'water full|stand|sit|hold mat|patch|place|spot -base -ditch -tack -edge',
    'hold+water -ditch -base -road',
  ],
  causes: [
    {
      text: 'the slope of the road was not put back',
      remedy: 'string or level it before the finish is rolled',
      source: armyPci('appendix B, depression'),
    },
    {
      text: 'a shoulder or a lip of sod higher than the edge',
      remedy: 'cut it down so that water leaves',
      source: commonPractice,
    },
    {
      text: 'the patch rolled down lower than the road',
      remedy: 'overfill slightly for the roll-down',
      rule: 'flush-finish',
      source: commonPractice,
    },
  ],
  now: 'Warm: loosen, add mix, roll. Cold: fill the low with a level lift on tack, or cut the shoulder that dams it.',
  nextTime: 'Check the slope with a level before you leave.',
  examples: {
    finds: ['birdbath in the finished patch', 'water sits on the mat after a rain'],
    not: ['old road holds water in the wheel paths and the base is soft', 'tar comes up through the patch'],
  },
});
