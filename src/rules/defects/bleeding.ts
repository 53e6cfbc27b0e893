import place from '../choices/defect-place.ts';
import { defect } from '../shapes-work.ts';
import { ltpp, taught } from '../sources-work.ts';

export default defect({
  id: 'bleeding',
  title: 'bleeding of the old road',
  seen: 'black, shiny, slick wheel paths',
  because: 'Binder with no room left between the stones is squeezed up in the heat.',
  sources: [ltpp('bleeding'), taught],
  cues: [
    'bleed|flushing road|pavement|old|wheelpath|repair|fix|cover|over -new -fresh -mat -my',
    'flush black|slick|shiny|tar road|pavement|old|wheelpath -new -fresh -mat -my',
    'bleed|flushing blade|patch over|check -new -fresh -mat -my',
    'road|pavement|wheelpath|surface black|shiny|slick|sticky|fat|tar -patch -mat -fresh -new -tack',
    'old+road slick|greasy|black|shiny|sticky tire|greasy|july|summer|hot|track -new -fresh -mat -patch',
    'fat|slick+road|pavement|surface',
    'tar|oil|liquid come|coming|bubble up old|road|pavement|wheelpath -new -fresh -mat -my',
    'fat spot old|road|pavement -new -fresh -mat -my',
    'bleed road|pavement|summer|old|mix patch|cover|fix over|how|which -new -fresh -mat -my',
  ],
  decisions: [
    {
      when: [],
      ifSaid: [{ choice: place, is: ['bridge-deck', 'railroad'] }],
      repair: 'engineer',
      because: 'weight and joints there are not for a patch crew to judge',
      source: taught,
    },
    {
      when: [],
      repair: 'blot-or-mill',
      because: 'nothing is laid over it: the binder comes up through, and the new mat slides',
      source: taught,
    },
  ],
  recorded: 'LTPP measures the bleeding area and rates no severity.',
});
