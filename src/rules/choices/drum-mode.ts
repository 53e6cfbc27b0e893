import { choice, commonPractice } from '../shapes.ts';
import { ncatForum } from '../sources-craft.ts';

export default choice({
  id: 'drum-mode',
  title: 'drum',
  because: 'A shaking drum breaks stone and loosens a thin or stiff mat instead of packing it.',
  sources: [ncatForum('static rolling on 1 in layers'), commonPractice],
  question: { text: 'Is the drum vibrating or static?', ease: 1 },
  options: [
    {
      id: 'static',
      title: 'static',
      cues: [
        'static',
        'vibration|vibrate|vibrator|vibe+off',
        'no+vibration',
        'without+vibration',
        'not+vibrate',
        'vibration|vibrator|vibe off|out',
        'off+vibration|vibe',
        'roll|rolled static',
      ],
    },
    {
      id: 'vibrating',
      title: 'vibrating',
      cues: ['vibrate', 'vibration -off -no -without', 'vibrator', 'vibe', 'vibratory', 'shake drum|roller'],
    },
  ],
});
