import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'temperature-trend',
  title: 'way the temperature goes',
  because: 'A road that is still warming keeps helping; one that is cooling has the night ahead of it.',
  sources: [commonPractice],
  question: { text: 'Is it getting warmer or colder?', ease: 1 },
  default: 'steady',
  options: [
    {
      id: 'falling',
      title: 'falling',
      cues: [
        '@after falling|dropping|colder|cool -#number',
        'temperature|degree|#temperature fall|drop|dropping|falling',
        'get|getting cold|colder|cool|cooler -hot+mix -cold+mix -hot+cold -cold+hot',
        'cool+down|off #temperature',
        'frost tonight',
        'go+down #temperature',
        '#number+fall|drop|dropping|falling',
        '#number drop|dropping|falling fast|quick',
        'go|going|head|heading+down #number',
      ],
    },
    {
      id: 'rising',
      title: 'rising',
      cues: [
        '@after go|going|come|coming+up -#number',
        '@after climb|rising|rise|warmer -#number',
        'temperature|degree|#temperature rise|rising|climb',
        'warm+up',
        'get|getting warm|warmer',
        'go+up #temperature',
        '#temperature rising|climb|rise|warmer',
        'rising|climb #number',
        '#number+rising|climb|rise|climbing|up',
        'go|going|head|heading+up #number',
      ],
    },
    { id: 'steady', title: 'steady', cues: ['steady temperature|#temperature', 'hold|holding #temperature'] },
  ],
});
