import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'waste-place',
  title: 'where the waste goes',
  because: 'Asphalt chunks and tacky sweepings plug ditches and drains and foul water.',
  sources: [commonPractice],
  question: {
    text: 'Where does it go: hauled off, where the agency allows clean fine material, or ditch, drain or yard?',
    ease: 1,
  },
  options: [
    {
      id: 'ditch',
      title: 'ditch, drain, wetland or yard',
      cues: [
        'ditch chunk|waste|sweeping|trimming|spoil|millings|cut',
        'dump|push|throw|put|blade ditch|inlet|yard|wetland|creek',
        'in|down+drain',
        'dump|push|throw|put drain',
        'in+ditch',
        'chunk|waste|sweeping|millings|mix|broken|busted|old ditch|drain|creek|woods|bank|river|inlet|sewer|field',
        'push|throw|dump|kick|toss|leave ditch|drain|creek|woods|bank|river|inlet|sewer|field',
        'down drain|bank|hill',
      ],
    },
    {
      id: 'roadside',
      title: 'feathered out along the road',
      cues: ['feather roadside|shoulder waste|check', 'spread along roadside', 'waste shoulder|roadside'],
    },
    {
      id: 'hauled',
      title: 'hauled off',
      cues: [
        'haul chunk|waste|sweeping|trimming|spoil|millings|off|away',
        'load out waste|chunk',
        'back+yard',
        'haul|hauled|load chunk|waste|busted|broken|old|millings|sweeping',
        'haul+it+off',
        'haul off|away|yard',
      ],
    },
  ],
});
