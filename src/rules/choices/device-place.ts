import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'device-place',
  title: 'where the devices stand',
  because: 'A taper moves traffic over and needs them closer than a straight line that only keeps it there.',
  sources: [manual('section 6K.01')],
  options: [
    { id: 'taper', title: 'on the taper', cues: ['taper', 'cone|device merge|angled|angle -straight'] },
    {
      id: 'tangent',
      title: 'along the buffer and the work',
      cues: ['tangent', 'cone|device straight|along|center|centerline -taper'],
    },
  ],
  question: { text: 'Do they stand on the taper, or along the buffer and the work?', ease: 1 },
});
