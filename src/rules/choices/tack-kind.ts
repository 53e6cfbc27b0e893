import { cutbackGrades, emulsionGrades } from '../grades.ts';
import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'tack-kind',
  title: 'kind of tack',
  because:
    'Emulsion is asphalt in water, cutback is asphalt in solvent, and paving asphalt is neither: they differ in what stays, how hot they are, and what water does to them.',
  sources: [commonPractice],
  question: { text: 'Is the tack an emulsion, a cutback, or straight asphalt?', ease: 2 },
  default: 'emulsion',
  options: [
    {
      id: 'cutback',
      title: 'cutback',
      cues: ['cutback', 'cut+back', 'rc', 'mc', ...cutbackGrades, 'solvent'],
    },
    {
      id: 'asphalt',
      title: 'straight asphalt',
      cues: ['binder', 'straight+mix', 'hot+binder', 'paving+grade', 'ac-5', 'ac-10', 'pen+grade'],
    },
    {
      id: 'emulsion',
      title: 'emulsion',
      cues: [...emulsionGrades, 'emulsified'],
    },
  ],
});
