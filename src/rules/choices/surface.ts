import { choice } from '../shapes.ts';
import { fromMemory } from '../sources-craft.ts';

export default choice({
  id: 'surface',
  title: 'surface under the tack',
  because: 'A worn, a fresh and a cut surface drink tack differently.',
  sources: [fromMemory('FHWA-HIF-16-017, Tack Coat Best Practices, rates by surface')],
  question: { text: 'Does the tack go on a worn surface, a fresh lift or a cut one?', ease: 1 },
  default: 'worn',
  options: [
    {
      id: 'cut',
      title: 'cut or milled',
      cues: [
        'mill',
        'milled',
        'cut+surface',
        'planed',
        'ground+off',
        'cold+plane',
        'milled|planed|ground|scarified+surface',
        'cut+road|pavement',
        'mill|milled+off',
      ],
    },
    {
      id: 'fresh-lift',
      title: 'fresh lift',
      cues: [
        'lift|mat rolled|laid|we this|today|yesterday|morning',
        'on+top lift|mat -old',
        'today|yesterday|morning+lift|mat',
        'fresh+lift',
        'new+lift',
        'between+lift -coat',
        'new+mat|mix|surface',
        'fresh+mat|mix|surface',
        'lift|mat we just',
      ],
    },
    { id: 'concrete', title: 'concrete', cues: ['concrete', 'pcc', 'cement'] },
    {
      id: 'worn',
      title: 'worn',
      cues: [
        'worn',
        'old+surface|road|mix|pavement',
        'existing+surface|road|mix|pavement',
        'oxidized',
        'surface|road|pavement|lane gray|grey|faded|weathered|aged',
        'gray|grey+pavement|road|surface|mix',
        'worn|weathered|faded+surface|road|pavement',
      ],
    },
  ],
});
