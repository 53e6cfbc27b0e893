import { repair } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default repair({
  id: 'blot-or-mill',
  title: 'blot it, or mill it off',
  because: 'Free binder comes up through anything laid on it, and makes the new mat slide.',
  sources: [taught, ufcRepair('3.3.4: excess binder')],
  cues: ['how|what blot', 'sand bleed how', 'how|what blot+mill'],
  named: ['blot', 'sand'],
  how: [
    'Light: spread clean coarse sand on a hot day, roll it in, sweep off what stays loose.',
    'Heavy or soft: mill or cut it off, tack the cut face, lay it again.',
    'No mix goes over a bleeding surface.',
  ],
  rules: ['waste-disposal', 'open-to-traffic'],
  caution: 'A fat surface is slick, wet or dry: slow signs until it is blotted.',
});
