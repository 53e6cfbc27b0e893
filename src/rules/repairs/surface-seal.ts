import { commonPractice } from '../shapes.ts';
import { repair } from '../shapes-work.ts';

export default repair({
  id: 'surface-seal',
  title: 'surface seal',
  because: 'While the stones still hold, a thin seal keeps water and air out for a fraction of the mix.',
  sources: [commonPractice],
  cues: ['how|what surface+seal', 'fog|chip+seal how|what|check'],
  named: ['seal+coat', 'sealcoat', 'fog+seal', 'chip+seal', 'surface+seal'],
  how: [
    'Sweep it clean and dry.',
    'Fog seal for fine wear, chip seal where the surface has opened: by the agency’s own rates.',
    'Keep traffic slow until it is swept.',
  ],
  rules: ['tack-clean-dry', 'air-temperature'],
  caution: 'Hot and slick while fresh: traffic slow, loose stone swept.',
});
