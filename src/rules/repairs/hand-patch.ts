import { repair } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';

export default repair({
  id: 'hand-patch',
  title: 'hand patch',
  because: 'One hole is squared, filled and packed by hand sooner than a grader can be brought.',
  sources: [ufcRepair('3.2.2 to 3.3.4, pp. 8-10')],
  cues: ['how|what hand+patch', 'how|what shovel+patch', 'how fill pothole|hole hand|shovel', 'throw+roll'],
  named: ['hand+patch', 'shovel+patch', 'patch+hand', 'throw+roll'],
  how: [
    'Square the hole back to sound road, and clean and dry it.',
    'Tack the bottom and the faces thinly.',
    'Fill in thin layers, each packed, and leave it slightly high; rake without overworking.',
    'Roll or plate it, and seal the edges.',
  ],
  rules: ['tack-clean-dry', 'flush-finish'],
  caution: 'Short work is still work in the road: lights, lookout, traffic control.',
});
