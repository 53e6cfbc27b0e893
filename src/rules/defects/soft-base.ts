import place from '../choices/defect-place.ts';
import recurring from '../choices/recurring.ts';
import water from '../choices/water-state.ts';
import { defect } from '../shapes-work.ts';
import { fm5436, ufcRepair } from '../sources-craft.ts';
import { taught, texasDistress } from '../sources-work.ts';

export default defect({
  id: 'soft-base',
  title: 'soft base',
  seen: 'a road that moves, pumps or gives under a loaded truck',
  because: 'Water or poor ground has taken the strength out of what carries the road.',
  sources: [ufcRepair('3.2.2, pp. 8-9'), texasDistress],
  cues: [
    'base|subgrade|ground soft|mush|mushy|spongy|bad|fail|wet|gone|rotten|shot',
    'pump base|road|water|mud|fines|crack -gallon',
    'mush|mud|soft underneath|under|below|cut',
    'road|pavement|lane move|give|spongy|pump|flex -mat -patch',
    'soft+base|subgrade',
    'soft+spot road|base|old',
    'mud|fines|silt come|coming|squirt|pump|up crack',
    'piece loose wet|soft|mud underneath|under',
    'road|pavement go|going+soft',
    'crack mud',
  ],
  decisions: [
    {
      when: [{ choice: place, is: ['bridge-deck', 'railroad', 'slide', 'pipe'] }],
      repair: 'engineer',
      because: 'the ground or the structure below may be going',
      source: taught,
    },
    {
      when: [{ choice: recurring, is: ['returned'] }],
      repair: 'engineer',
      with: ['dig-out'],
      because: 'it came back within a year: find out why before it is dug again',
      source: fm5436('ch. 7, paras 7-1 to 7-4'),
    },
    {
      when: [],
      ifSaid: [{ choice: water, is: ['rising', 'standing'] }],
      repair: 'dig-out',
      with: ['fix-drainage-first'],
      engineer: true,
      because: 'water made it soft, and makes it soft again: drain it as it is dug',
      source: ufcRepair('3.2.2, pp. 8-9'),
    },
    {
      when: [],
      repair: 'dig-out',
      because: 'a base that moves breaks whatever is laid on it: dig it out, dry it, rebuild it, and find the water',
      source: ufcRepair('3.2.2, pp. 8-9'),
    },
  ],
});
