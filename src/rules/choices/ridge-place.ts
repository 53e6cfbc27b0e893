import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'ridge-place',
  title: 'where the ridge runs',
  because:
    'A toe that leaks, tires that pack loose mix, and a row in the middle of the lane each leave a ridge in their own place.',
  sources: [commonPractice],
  question: {
    text: 'Where does the ridge run: along the line where the blade picks up the row, in the tracks of the grader, or down the middle of the lane?',
    ease: 1,
  },
  options: [
    {
      id: 'pick-up',
      title: 'along the pick-up line',
      cues: [
        'ridge blade|toe pick|pickup where',
        'toe ridge',
        'pick-up+line',
        'pick+up+line',
        'ridge between pass|strip',
      ],
    },
    {
      id: 'tracks',
      title: 'in the tracks of the grader',
      cues: ['tire|wheel+track|mark', 'track grader|tire|wheel', 'tire|wheel ridge'],
    },
    {
      id: 'middle',
      title: 'down the middle of the lane',
      cues: ['middle|center+lane|patch|mat ridge|hump', 'down+middle|center', 'middle lane ridge|hump'],
    },
  ],
});
