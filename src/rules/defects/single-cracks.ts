import baseState from '../choices/base-state.ts';
import place from '../choices/defect-place.ts';
import crackWidth from '../quantities/crack-width.ts';
import { commonPractice } from '../shapes.ts';
import { defect } from '../shapes-work.ts';
import { ltpp, taught, texasDistress } from '../sources-work.ts';

export default defect({
  id: 'single-cracks',
  title: 'single cracks',
  seen: 'cracks that run alone, along or across the road',
  because: 'The road shrinks in the cold, or a joint below opens; water then gets to the base.',
  sources: [ltpp('longitudinal and transverse cracking'), commonPractice],
  cues: [
    'crack across|along|long|longitudinal|transverse|straight|single road|lane|old|repair|fix|seal|pavement -mat -fresh -new -edge -alligator',
    'long|single|straight+crack',
    'crack repair|fix|seal|fill -alligator -edge -slip -network -mat -half-moon',
    'thermal|transverse|longitudinal|block+crack',
    'thermal|transverse|longitudinal crack',
    'crack every #length',
    'one crack -alligator -mat -patch',
  ],
  decisions: [
    {
      when: [],
      ifSaid: [{ choice: place, is: ['bridge-deck', 'railroad', 'slide', 'pipe'] }],
      repair: 'engineer',
      because: 'a crack there may be the deck, the pipe or the ground going',
      source: taught,
    },
    {
      when: [],
      ifSaid: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'the base is giving under it',
      source: texasDistress,
    },
    {
      when: [],
      repair: 'crack-seal',
      because: 'a blade patch over single cracks only hides them until they come through',
      source: commonPractice,
    },
  ],
  severity: [
    {
      scheme: 'LTPP',
      source: ltpp('longitudinal and transverse cracking'),
      by: [crackWidth],
      low: { number: 6, unit: 'mm' },
      moderate: { number: 19, unit: 'mm' },
    },
  ],
});
