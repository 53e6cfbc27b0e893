import { fault } from '../shapes-work.ts';
import { bladeSpreading, navyBasic, ufcRepair } from '../sources-craft.ts';

export default fault({
  id: 'bleeding',
  title: 'bleeding',
  seen: 'black, shiny, sticky spots in the new patch',
  because: 'Binder that the stone cannot hold is squeezed up, and leaves a slick film.',
  sources: [
    ufcRepair('3.2.2 to 3.3.4, pp. 8-10'),
    navyBasic('ch. 16, spray bar overlap at section ends'),
    bladeSpreading('fat clusters'),
  ],
  cues: [
    'bleed|bled -water -old',
    'flushing patch|mat|black|tar|spot|up|slick -edge -old -wheelpath -road',
    'flush black|tar|slick|shiny -edge -finish -old -wheelpath -road',
    'fat+spot|patch|streak|place',
    'black|shiny|slick|sticky|wet spot|patch|mat|place|streak -tack -lump -chunk -broke -drum',
    'tar|oil|liquid come|coming|bubble up|through|out',
    'sticky|gooey|shiny mat|patch|surface',
    'patch shine|shiny|slick',
    'oil|tar|liquid sweat|seep|ooze|come mat|patch|mix|out|up -tack -old -road',
    'sweat mat|patch',
  ],
  causes: [
    {
      text: 'too much tack or prime',
      remedy: 'a thinner film next time',
      rule: 'tack-rate',
      source: ufcRepair('3.2.2 to 3.3.4, pp. 8-10'),
    },
    {
      text: 'the bar overlapped at the end of a run: a double coat',
      remedy: 'cut off sharp; paper at the joint',
      source: navyBasic('ch. 16, spray bar overlap at section ends'),
    },
    {
      text: 'mix too rich, or fat lumps in a cold mix',
      remedy: 'tell the plant; pull a fat heap tight and let it cure before it is laid',
      source: bladeSpreading('fat clusters'),
    },
  ],
  now: 'Blot it with clean sand, sweep, and sand again. Where it is soft, cut it out and lay it again.',
  nextTime: 'Pad-test the bar; overlap nothing.',
  caution: 'It is slick: slow signs up until it is blotted.',
  examples: {
    finds: [
      'black shiny spots coming up in the patch',
      'the surface is gooey and slick, tar comes through',
      'fat spot in the mat',
    ],
    not: ['mix is rocky and open', 'water stands on the patch'],
  },
});
