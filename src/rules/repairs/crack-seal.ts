import { commonPractice } from '../shapes.ts';
import { repair } from '../shapes-work.ts';

export default repair({
  id: 'crack-seal',
  title: 'crack seal',
  because: 'A crack that is filled keeps water off the base; one that is not becomes a pothole.',
  sources: [commonPractice],
  cues: ['how|what crack+seal', 'how|what seal|fill crack'],
  named: ['crack+seal', 'seal+crack', 'crackseal'],
  how: ['Blow it clean and dry.', 'Fill it flush, and strike it off.', 'Keep tires off until it has set, or dust it.'],
  rules: ['tack-clean-dry'],
  caution: 'Sealant burns: face shield, gloves, sleeves.',
});
