import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'wave-place',
  title: 'where it waves',
  because:
    'Scalloped is said of three things: waves that a bouncing machine leaves across the mat, an outer edge that goes in and out, and a worn cutting edge.',
  sources: [commonPractice],
  question: { text: 'Where: across the mat, along its outer edge, or on the cutting edge of the blade?', ease: 1 },
  options: [
    {
      id: 'cutting-edge',
      title: 'on the cutting edge of the blade',
      cues: ['cut+edge blade|worn|scallop', 'edge+blade'],
    },
    {
      id: 'outer-edge',
      title: 'along the outer edge',
      cues: ['edge in+out', 'outer|outside+edge', 'edge wavy|waver|scallop|starved', 'along+edge|shoulder'],
    },
    {
      id: 'across',
      title: 'across the mat',
      cues: ['across+mat|lane|patch', 'crosswise wave|ripple', 'mat wave|ripple across', 'bounce'],
    },
  ],
});
