import { commonPractice } from '../shapes.ts';
import { repair } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';

export default repair({
  id: 'blade-patch',
  title: 'blade patch',
  because: 'A grader lays level thin lifts over a length that a rake could never bring true.',
  sources: [commonPractice, ufcRepair('ch. 7, pp. 39-40')],
  cues: ['what|how do blade+patch', 'when blade+patch check', 'where blade+patch work'],
  named: ['blade+patch', 'grader+patch'],
  how: [
    'Cut what stands proud, dig out what is loose, fill deep holes first in level layers.',
    'Sweep, tack, and let it break.',
    'Lay thin lifts from one straight row, each rolled before the next, ends and edges tapered.',
  ],
  rules: ['lift-max', 'lift-min', 'tack-set', 'roll-each-lift'],
  caution: 'Traffic control goes up before anyone is on the road.',
});
