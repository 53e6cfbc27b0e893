import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { everett } from '../sources-craft.ts';

export default fault({
  id: 'runs-short',
  title: 'runs short',
  seen: 'a row that gives out before the end',
  because: 'The row held less than the width and depth ask for, or it was not the same size all along.',
  sources: [commonPractice, everett('(12)A1, temporary wedge')],
  cues: [
    'ran|run|came|come|coming+short -gonna -will -going',
    'ran|run|running+out -taper -turn -sign -cone',
    'ran+out mix|windrow|before|short|end -will -sign -cone -out+there',
    'short mix|ton|feet|end|of -lift -hand -cut -sign -taper',
    'not check mix|windrow finish|reach|end|left -will -is',
    'mix|windrow gave|give+out -check -end+even',
    'out+mix|windrow -how -way -come',
    'ran dry -distributor -tack -tank -spray|shoot',
    'windrow|mix quit -grader -roller -machine -engine',
    'windrow|mix #length bare|uncovered|empty -roller -tack',
    'still+bare #length -tack -roller -truck',
    'not make end|far',
    'mix|windrow died|quit|gone #length|end|short -grader -roller',
    'not check mix finish|end|reach',
  ],
  causes: [
    {
      text: 'a row too small for the width and depth',
      remedy: 'figure it from the tons: weigh loads, not looks',
      source: commonPractice,
    },
    {
      text: 'a row of uneven size',
      remedy: 'size it straight and even, from both ends',
      rule: 'windrow-side',
      source: commonPractice,
    },
    {
      text: 'a lift laid thicker than it was figured',
      remedy: 'check the loose depth behind the blade[[: {lift-loose}]]',
      source: commonPractice,
    },
    {
      text: 'no mix dumped past the ends',
      remedy: 'dump past the tack at both ends[[: {end-spread}]]',
      rule: 'end-spread',
      source: commonPractice,
    },
  ],
  now: 'Do not stretch it thin. End it with a gentle ramp[[, {min:overnight-ramp} of thickness or flatter]], rolled, with a BUMP sign; next day cut back to a clean edge, tack, and go on.',
  nextTime: 'Count tons to the hundred feet of row, and order for waste and for the ends.',
  examples: {
    finds: ['ran out 40 ft short of the end', 'row gave out before we got to the end'],
    not: ['there is a pile left at the end', 'how short can a taper be'],
  },
});
