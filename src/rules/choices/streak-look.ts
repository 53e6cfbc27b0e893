import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'streak-look',
  title: 'look of the streak',
  because:
    'A rocky streak has lost its fines, a groove has been scratched, and a bare streak of tack was never sprayed.',
  sources: [commonPractice],
  question: {
    text: 'Is the streak rocky and open, a scratched groove, or a bare or heavy streak in the tack?',
    ease: 1,
  },
  options: [
    {
      id: 'rocky',
      title: 'rocky and open',
      cues: ['stone|rocky|coarse|bony|boney|open streak|strip|band', 'rocky+open'],
    },
    { id: 'groove', title: 'a scratched groove', cues: ['groove', 'scratch|gouge'] },
    {
      id: 'tack',
      title: 'a streak in the tack',
      cues: ['tack streak|stripe|strip|bare', 'nozzle', 'spray|bar streak|stripe|gap'],
    },
  ],
});
