import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'visibility',
  title: 'how far drivers see',
  because: 'Every distance of the layout takes for granted that the driver sees the sign, the flagger and the queue.',
  sources: [commonPractice],
  options: [
    {
      id: 'poor',
      title: 'fog, dust, heavy rain or low sun',
      cues: ['fog', 'foggy', 'sun eye', 'glare', 'unseen road|car|driver|traffic -spotter -flagger'],
    },
    { id: 'clear', title: 'clear', cues: ['clear visibility|view', 'check+visibility'] },
  ],
  question: { text: 'Can drivers see the signs and the flagger in time?', ease: 1 },
});
