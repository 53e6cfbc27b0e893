import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'windrow-place',
  title: 'where the row lies',
  because: 'The first lift is carried outward from the row, so it starts on the inside.',
  sources: [commonPractice],
  question: {
    text: 'Where does the row lie when the first lift begins: center-line side, middle or shoulder side?',
    ease: 1,
  },
  options: [
    {
      id: 'over-line',
      title: 'over the center line',
      cues: ['windrow over|across+center|line', 'windrow on+center|yellow'],
    },
    {
      id: 'shoulder-side',
      title: 'shoulder side',
      cues: ['windrow shoulder|outside|edge|ditch -center', 'windrow shoulder|outside|edge|ditch -center -inside'],
    },
    {
      id: 'middle',
      title: 'middle of the patch',
      cues: ['windrow middle|center -center+line -centerline', 'windrow down+middle'],
    },
    {
      id: 'inside',
      title: 'center-line side',
      cues: [
        'windrow beside|by|along yellow|centerline|line',
        'windrow center+line',
        'windrow centerline|inside|crown',
        'windrow inside+edge',
      ],
    },
  ],
});
