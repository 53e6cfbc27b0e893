import { choice, geometry } from '../shapes.ts';

export default choice({
  id: 'patch-shape',
  title: 'shape of the hole',
  because: 'In a hole cut square every lift has the same area; in a dish the lower ones are narrower and take less.',
  sources: [geometry],
  question: { text: 'Is it cut square, or dished like a rut or a sag?', ease: 1 },
  options: [
    {
      id: 'square-cut',
      title: 'cut square',
      cues: ['square+cut', 'cut+square', 'box+cut', 'boxed', 'vertical+edge|side'],
    },
    { id: 'dished', title: 'dished', cues: ['dish', 'dished', 'bowl', 'sag', 'saucer'] },
  ],
});
