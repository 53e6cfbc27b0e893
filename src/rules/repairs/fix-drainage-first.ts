import { commonPractice } from '../shapes.ts';
import { repair } from '../shapes-work.ts';
import { fm5436 } from '../sources-craft.ts';

export default repair({
  id: 'fix-drainage-first',
  title: 'drainage first',
  because: 'Mix laid over water that cannot leave fails as the road under it did.',
  sources: [fm5436('ch. 7, paras 7-1 to 7-4'), commonPractice],
  cues: [
    'how|what fix drainage|drain|ditch -alligator -rut -base -firm',
    'drainage+first',
    'ditch plug|plugged|clogged|full|blocked',
    'no+drainage',
    'water stand|sit|trap|stay edge|shoulder|road -patch -mat',
    'ditch not drain',
    'road|pavement soft|break water|ditch',
  ],
  named: ['fix+drainage', 'drainage+first', 'ditch'],
  how: [
    'Find where the water comes from and where it should go.',
    'Open the ditch, clear the pipe, cut the high shoulder down.',
    'Let the spot dry, test it with a loaded truck, then choose the repair.',
  ],
  rules: ['waste-disposal'],
  caution: 'Locates before any digging; keep machines back from the ditch edge.',
});
