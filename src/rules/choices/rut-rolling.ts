import { choice } from '../shapes.ts';
import { florida, ufcRepair } from '../sources-craft.ts';

export default choice({
  id: 'rut-rolling',
  title: 'how the rut is rolled',
  because: 'A stiff drum rests on the high sides of a rut and never touches the mix in it.',
  sources: [
    florida('section 330: pneumatic tires for patching and levelling'),
    ufcRepair('7, p. 40: pneumatic works best in ruts'),
  ],
  question: {
    text: 'How is the mix in the rut rolled: in the rut first, with tires, or straight across with the drum?',
    ease: 1,
  },
  options: [
    {
      id: 'in-rut-first',
      title: 'in the rut first',
      cues: [
        'roll|rolled in+rut',
        'rut roll|rolled first',
        'narrow drum|roller rut',
        'wheel|tire truck|grader rut roll|pack|rolled',
      ],
    },
    {
      id: 'tires',
      title: 'with rubber tires',
      cues: ['rubber|pneumatic|tire rut roll|roller|rolled', 'rubber tire roller', 'pneumatic roller'],
    },
    {
      id: 'drum-across',
      title: 'with the drum across it',
      cues: [
        'drum|steel across|over rut',
        'drum|steel bridge rut',
        'steel|drum rut -first -narrow -rubber -tire',
        'roller bridge',
      ],
    },
  ],
});
