import { choice } from '../shapes.ts';
import { bladeSpreading, ufcRepair } from '../sources-craft.ts';

export default choice({
  id: 'soft-place',
  title: 'what is soft',
  because:
    'A soft spot in the new mix dries or is taken out; a soft base under it must be dug out, or the patch goes with it.',
  sources: [ufcRepair('3.2.2, pp. 8-9'), bladeSpreading('aeration of cold mix')],
  question: { text: 'Does the old road around the soft spot move too, or only the new mix?', ease: 1 },
  options: [
    {
      id: 'base',
      title: 'the old road moves too',
      cues: ['old+road|pavement move|give|pump', 'base|ground|underneath move|give|pump|spongy|mush -firm'],
    },
    { id: 'mix', title: 'only the new mix', cues: ['only|just new|mix|mat', 'only+new+mix', 'around firm|solid'] },
  ],
});
