import tackKind from '../choices/tack-kind.ts';
import tankWater from '../choices/tank-water.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'no-water-in-cutback',
  title: 'no water in cutback or hot asphalt',
  on: tankWater,
  when: [{ choice: tackKind, is: ['cutback', 'asphalt'] }],
  because:
    'Water under hot asphalt turns to steam and throws the load out of the tank; most cutback is sprayed above its flash point.',
  sources: [
    {
      document: 'tack coat best practices, roadresource.org',
      place: 'water and emulsion under hot binder',
      seen: 'read',
    },
    commonPractice,
  ],
  cues: [
    'water cutback|rc|mc|binder',
    'water+down|dilute|thin|cut cutback|rc|mc|binder',
    'add|put water tank|cutback|rc|mc hot|cutback|rc|mc',
  ],
  judged: {
    none: { status: 'ok', text: 'No water in it, as it must be.' },
    added: { status: 'stop', text: 'Never water in cutback or hot asphalt: it boils over.' },
  },
  cannotTell: 'Never add water to cutback or hot asphalt: it boils over.',
  fix: 'Check that the tank is empty and dry before hot asphalt goes in. No flame, no smoking.',
});
