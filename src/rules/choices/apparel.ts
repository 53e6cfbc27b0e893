import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'apparel',
  title: 'high-visibility apparel',
  because: 'Drivers and operators hit what they do not see.',
  sources: [manual('section 6C.05')],
  options: [
    {
      id: 'none',
      title: 'none',
      cues: [
        'not|no|without wear|bright|vest flagger|crew|worker|operator',
        'no+vest',
        'without vest',
        'vest off',
        'skip vest',
        'forgot vest',
        't-shirt',
        'must|need vest|wear -what -which -class',
        'shirt vest',
        't+shirt',
        'no|without|off vest',
      ],
    },
    {
      id: 'class-2-night-flagger',
      title: 'Performance Class 2 on a flagger at night',
      cues: ['class-2 night flagger|flag'],
    },
    { id: 'class-3', title: 'Performance Class 3', cues: ['class-3'] },
    { id: 'class-2', title: 'Performance Class 2', cues: ['class-2'] },
  ],
  question: { text: 'What high-visibility apparel is worn, and is it day or night?', ease: 1 },
});
