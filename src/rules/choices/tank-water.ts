import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'tank-water',
  title: 'water in the tank',
  because: 'Water thins an emulsion; under hot asphalt or cutback it turns to steam.',
  sources: [commonPractice],
  question: { text: 'Is water added to the tank?', ease: 1 },
  options: [
    { id: 'none', title: 'none', cues: ['no+water', 'undiluted', 'without water'] },
    {
      id: 'added',
      title: 'added',
      cues: [
        'stretch|thin|cut|extend|water water -no',
        'water|splash tank|it add|some|little|in @check',
        'water+down',
        'add|put|pour water',
        'dilute',
        'dilution',
        'cut+with water',
        'thin with+water',
        'water it+down',
      ],
    },
  ],
});
