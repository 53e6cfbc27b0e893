import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'mat-age',
  title: 'what it is in',
  because: 'What shows in a mat just laid is put right there and then; the same on an old road asks for a repair.',
  sources: [commonPractice],
  question: { text: 'Is that in the patch you have just laid, or in the old road?', ease: 1 },
  options: [
    { id: 'old', title: 'in the old road', cues: ['old+road|pavement|surface', 'existing+road|pavement', 'road years|year+old'] },
    { id: 'fresh', title: 'in the patch just laid', cues: ['just+laid', 'fresh|new+mat|patch', 'laid today|yesterday|hour'] },
  ],
});
