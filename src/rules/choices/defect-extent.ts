import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'defect-extent',
  title: 'extent',
  because: 'Bringing up a grader, trucks and a roller pays for a stretch; a single hole is filled sooner by hand.',
  sources: [commonPractice],
  question: { text: 'Is it a single spot, several close together, or a long stretch?', ease: 1 },
  options: [
    {
      id: 'several',
      title: 'several close together',
      cues: [
        'several|lot|many|bunch|full|group|cluster|dozen|string hole|pothole',
        'pothole|hole all+over',
        'pothole|hole everywhere',
        'several close',
        '#number+pothole|hole -one',
        '#number+shallow|small|big+pothole|hole -one',
        'many pothole|hole',
      ],
    },
    {
      id: 'long',
      title: 'a long stretch',
      cues: ['long+stretch', 'whole+stretch|lane|section', 'both+wheelpath'],
    },
    {
      id: 'one-spot',
      title: 'a single spot',
      cues: [
        'single|big|isolated+hole|pothole|spot -lot -several',
        'only|just+one',
        'rest road check|sound|solid pothole|hole|spot',
        'small+hole|spot|pothole',
        'single+spot',
        'one pothole|hole',
        'one+spot',
        'lone|lonely|isolated|single',
        'dinner|plate|bucket hole|pothole',
      ],
    },
  ],
});
