import { commonPractice } from '../shapes.ts';
import { repair } from '../shapes-work.ts';

export default repair({
  id: 'watch-it',
  title: 'leave it and watch it',
  because:
    'A thin skin over a shallow fault does more harm than the fault: it is thinner than its own stones, and peels.',
  sources: [commonPractice],
  cues: ['leave alone|watch road|rut|it', 'when leave alone road|rut'],
  named: ['leave+alone', 'watch|leave it'],
  how: [
    'Write down where it is and how deep, and put a date on it.',
    'Look again after the next wet season; seal cracks meanwhile.',
  ],
  rules: ['lift-min'],
  caution: 'Measure it with the lane protected, never alone.',
});
