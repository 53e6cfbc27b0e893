import { choice } from '../shapes.ts';
import { niosh, oshaRollover } from '../sources-craft.ts';

export default choice({
  id: 'edge-support',
  title: 'edge under the roller',
  because: 'A drum that hangs over an edge puts half the machine on it.',
  sources: [niosh('overturn at edges'), oshaRollover('overturns with and without belt')],
  question: { text: 'Is the edge firm and level, soft, or a drop-off?', ease: 1 },
  options: [
    {
      id: 'drop-off',
      title: 'a drop-off',
      cues: [
        'roller|drum|roll|rolled edge drop|dropoff|lip',
        'roller|drum|roll|rolled over|past+drop|dropoff',
        'roller|drum ditch',
        'roller|drum hang|overhang drop|ditch',
        'roll|rolled|roller|drum lip|drop|dropoff|ditch',
        'lip drop+off roll|rolled|roller',
      ],
    },
    {
      id: 'soft',
      title: 'soft',
      cues: [
        'roller|drum|roll|rolled soft|muddy|loose edge|shoulder',
        'roller|drum|roll|rolled shoulder soft|wet|muddy',
        'soft|muddy|loose edge|shoulder roll|rolled|drum|roller',
        'shoulder soft',
      ],
    },
    {
      id: 'firm',
      title: 'firm and level',
      cues: [
        'roller|drum|roll|rolled firm|solid|level|paved edge|shoulder',
        'shoulder firm|solid|level|hard|paved',
        'firm|solid|level|hard|paved+shoulder|edge',
      ],
    },
  ],
});
