import { repair } from '../shapes-work.ts';
import { texasDistress } from '../sources-work.ts';

export default repair({
  id: 'cut-then-blade',
  title: 'cut, then blade',
  because: 'Mix that flows or has slid goes on moving under whatever is laid on it; it must go first.',
  sources: [texasDistress],
  cues: ['how|what cut+blade', 'mill+patch|blade', 'blade|mill off patch -edge'],
  named: ['cut+blade', 'mill+blade', 'mill+off', 'cut+off'],
  how: [
    'Cut or mill the bad mix off, down to what is sound and holds.',
    'Sweep, tack the cut face, let it break.',
    'Lay thin lifts, each rolled; where wheels brake and turn, a dense hot mix.',
  ],
  rules: ['lift-max', 'tack-clean-dry', 'waste-disposal'],
  caution: 'Nothing is cut over a loop, a casting or a pipe; cutting makes silica dust: water on, cab shut.',
});
