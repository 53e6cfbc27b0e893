import tackKind from '../choices/tack-kind.ts';
import dilution from '../quantities/dilution.ts';
import { commonPractice, limit } from '../shapes.ts';

export default limit({
  id: 'cutback-undiluted',
  title: 'cutback and hot asphalt undiluted',
  on: dilution,
  min: { number: 100, unit: '%' },
  breaks: 'stop',
  besideRule: 'no-water-in-cutback',
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
  text: {
    ok: 'No water in it.',
    stop: '{on} undiluted: water in cutback or hot asphalt boils over.',
    cannotTell:
      'Never add water to cutback or hot asphalt: it boils over. Nearly all cutback is sprayed hotter than its vapor flashes: no flame, no smoking.',
  },
  fix: 'Put no water in it; check that the tank is empty and dry before hot asphalt goes in. No flame, no smoking.',
  examples: {
    holds: { dilution: [100, '%'], 'tack-kind': 'cutback' },
    boundary: { dilution: [100, '%'], 'tack-kind': 'asphalt' },
    breaks: { dilution: [50, '%'], 'tack-kind': 'cutback' },
    cannotTell: { 'tack-kind': 'cutback' },
    also: [{ facts: { dilution: [50, '%'], 'tack-kind': 'emulsion' }, is: 'not-applicable' }],
  },
});
