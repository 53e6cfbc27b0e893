import surfaceState from '../choices/surface-state.ts';
import { commonPractice, practice } from '../shapes.ts';
import { ufcFlexible } from '../sources-craft.ts';

export default practice({
  id: 'tack-clean-dry',
  title: 'clean and dry before tack',
  on: surfaceState,
  because:
    'Tack sticks to the first thing it meets: on dust, mud or water it lets go with it, and the patch slides off.',
  sources: [
    { document: 'trade questions and answers on tack', place: 'no spraying on a frozen pavement', seen: 'restated' },
    ufcFlexible('ch. 3, tack coats: clean and dry surface'),
    commonPractice,
  ],
  cues: [
    'road|surface|patch|pavement dry broom|broomed|swept|clean distributor|tack|spray|shoot',
    'why swept|sweep|broom tack|spray|shoot|before',
    'tack|spray|shoot|shot wet|damp|dusty|dust|mud|muddy|dirty|frost|puddle|water @check',
    'tack|spray|shoot|shot puddle|mud|muddy|damp|frost|dust|dusty|wet|water anyway|still|over|regardless -how-many -rain -cutback -brown -broke -tank',
    'tack|spray|shoot|shot puddle|mud|muddy|frost -how-many -rain -rate -residual',
    'tack|spray|shoot|shot standing+water -how-many -rain -rate -residual',
    'damp @check',
    'tack|spray|shoot|shot puddle|mud|muddy|frost|dusty|dust|ice|icy -how-many -gallon -driven -drove',
    'tack|spray|shoot|shot standing|wet+water|surface|road|pavement|spot -how-many -gallon',
    'clean+dry tack',
    'puddle|standing|water tack|spray|shoot|shot over|through|on -how-many -rain -brown -broke -tank -black',
    'sweep before tack @check',
    'need sweep|swept',
    'surface|road|pavement damp|wet|dirty|dusty tack|spray|shoot|shot',
    'why clean|dry|sweep',
    'puddle|mud|muddy|frost|standing|soak tack|spray|shoot|shot -how-many -black -broke',
    'dirt|dirty|dust|mud|puddle|damp|dew|frost|wet spray|shoot|tack @check',
    'dirt|dust|mud spot|road spray|shoot|tack',
    'not+sweep|swept tack|spray|shoot',
    'swept|broomed|clean dry tack|spray|shoot @check',
  ],
  judged: {
    'clean-dry': { status: 'ok', text: 'Clean and dry: the tack can go down.' },
    damp: {
      status: 'caution',
      text: 'Merely damp: some specifications let emulsion go on a damp surface; cutback wants it dry. Ask yours, or wait.',
    },
    wet: { status: 'stop', text: 'No tack on standing water: it floats off.' },
    frosty: { status: 'stop', text: 'No tack on frost: it breaks over ice and comes off with it.' },
    muddy: { status: 'stop', text: 'No tack on mud: it sticks to the mud and not to the road.' },
    dusty: { status: 'stop', text: 'No tack on dust: it sticks to the dust and not to the road.' },
  },
  cannotTell: 'Tell me how the surface is: clean and dry, damp, wet, dusty, muddy or frosty.',
  fix: 'Sweep or blow it until old asphalt and stone show, let it dry, and look again.',
});
