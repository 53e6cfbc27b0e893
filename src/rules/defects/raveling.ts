import baseState from '../choices/base-state.ts';
import place from '../choices/defect-place.ts';
import ravelState from '../choices/ravel-state.ts';
import { commonPractice } from '../shapes.ts';
import { defect } from '../shapes-work.ts';
import { ufcRepair } from '../sources-craft.ts';
import { ltpp, taught, texasDistress } from '../sources-work.ts';

export default defect({
  id: 'raveling',
  title: 'raveling of the old road',
  seen: 'an old surface that has lost its fines, and then its stones',
  because: 'Binder grown hard lets go of the stones at the top, one layer after another.',
  sources: [ltpp('raveling'), commonPractice],
  cues: [
    'ravel old|road|pavement|surface|repair|fix|wheelpath -new -fresh -mat -edge',
    'old|road|surface worn|open repair|fix|seal|treat -residual -residue -spray -shoot -rate -mat -fresh -hole -patch -tack -lane',
    'old|road|surface rough|pit -residual -residue -spray -shoot -rate -mat -fresh -hole -patch -tack -wide -closed -lane',
    'road|surface losing|lose|lost|shed stone -new -fresh -mat -patch -crack+over',
    'road lose|lost|throw stone -patch -mat',
    'surface|road gray|grey|brittle|dried old|repair|fix|seal -new -fresh -mat -lump -chunk -piece -tack -base -residual -spray -gallon',
    'surface|road lose|losing fines|stone|gravel -new -fresh -mat',
    'old+road|pavement weathered|dry|gray|dried|brittle -rut -dip -hole -sag -alligator -new -mat -lump -chunk -piece -fresh -mixed',
    'road|pavement weathered|oxidized',
  ],
  decisions: [
    {
      when: [],
      ifSaid: [{ choice: baseState, is: ['soft'] }],
      repair: 'dig-out',
      because: 'the base is giving: the surface is not the fault',
      source: texasDistress,
    },
    {
      when: [],
      ifSaid: [{ choice: place, is: ['bridge-deck', 'railroad'] }],
      repair: 'engineer',
      because: 'weight and joints there are not for a patch crew to judge',
      source: taught,
    },
    {
      when: [{ choice: ravelState, is: ['light'] }],
      repair: 'surface-seal',
      because: 'the stones still hold: a seal keeps them, and a skin of mix would peel',
      source: commonPractice,
    },
    {
      when: [{ choice: ravelState, is: ['deep'] }],
      repair: 'blade-patch',
      with: ['hand-patch'],
      because: 'stones are gone, so there is depth to fill: holes first by hand, then thin lifts',
      source: ufcRepair('ch. 7, p. 40'),
    },
  ],
  recorded: 'LTPP measures the raveled area and rates no severity.',
});
