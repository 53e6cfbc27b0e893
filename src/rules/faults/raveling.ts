import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'raveling',
  title: 'raveling',
  seen: 'stones that come loose from the patch under traffic',
  because: 'Mix packed cold, dirty or too open is not glued stone to stone, and wheels pick it apart.',
  sources: [taught, commonPractice],
  cues: [
    'ravel',
    'stone|gravel loose|come|coming|pop|fly|throw out|off|patch|mat|windshield|traffic -kick',
    'throw stone',
    'patch|mat come|coming|fall|falling apart -blade -pull',
    'patch|mat shed|lose|losing|lost stone',
    'loose+stone patch|mat|surface|traffic',
    'surface|patch|edge unravel|crumble -thin -feather',
    'shed stone|gravel',
    'stone loose|coming|popping|flying patch|mat|traffic|tire',
    'lose stone patch|mat',
    'patch|mat gravel',
  ],
  causes: [
    {
      text: 'rolled too late, or too cold',
      remedy: 'roll right behind the blade',
      rule: 'roller-keeps-up',
      source: taught,
    },
    {
      text: 'laid too cold, or too late in the year',
      remedy: 'wait for warm and rising',
      rule: 'air-temperature',
      source: taught,
    },
    { text: 'dirty or dried-out mix', remedy: 'send it back', source: taught },
    {
      text: 'fines worked out by too many passes',
      remedy: 'fewer passes',
      rule: 'fewest-passes',
      source: commonPractice,
    },
  ],
  now: 'Sweep the loose stone, roll it in the warm of the day, and seal it; what keeps coming apart is cut out.',
  nextTime: 'Warm mix, few passes, roller on its heels.',
  examples: {
    finds: ['patch is throwing stones at windshields', 'the mat is coming apart under traffic', 'edges raveling'],
    not: ['stones kicking out under the blade in rocky streaks', 'the old road is worn and open all over, what repair'],
  },
});
