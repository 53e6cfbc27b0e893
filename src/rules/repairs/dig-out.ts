import { repair } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';
import { texasDistress } from '../sources-work.ts';

export default repair({
  id: 'dig-out',
  title: 'dig-out',
  because: 'What carries the road has failed: it is replaced from firm ground up, or the top fails again.',
  sources: [ufcRepair('3.2.2, pp. 8-9'), texasDistress],
  cues: ['how|what dig-out|digout', 'how|what dig+out', 'base+repair how|what', 'full+depth patch|repair how|what'],
  named: ['dig+out', 'digout', 'dig-out', 'deep+patch', 'full+depth', 'base+repair'],
  how: [
    'Locates first, then saw it square, well into sound road.',
    'Dig down to firm dry ground, and find where the water comes from.',
    'Rebuild the base in thin rolled layers; prime it.',
    'Bring it up in lifts of mix, tacked faces, each rolled, flush with the road.',
  ],
  rules: ['lift-max', 'flush-finish', 'waste-disposal'],
  caution:
    'Locates called and marked before a shovel goes in; cutting makes silica dust; nobody in a hole beside traffic or under a bank.',
});
