import { geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'rolling-area-rate',
  title: 'area rolled in an hour',
  dimension: 'area-rate',
  units: { us: 'yd2/h', metric: 'm2/h' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Every trip rolls the drum less its overlap, and each spot is rolled several times.',
  sources: [
    geometry,
    {
      document: 'FM 5-434, Earthmoving Operations (now TM 3-34.62)',
      issuer: 'US Department of the Army',
      edition: '15 June 2000',
      place: 'para 11-36: 16.3 W S L E ÷ N, the same by volume',
      seen: 'restated',
    },
  ],
  cues: ['square+yard|feet hour roll|roller|rolled', 'area hour roll|roller|rolled'],
  bare: false,
  asks: 'How many square yards an hour rolled?',
  beside: ['rolling-rate'],
});
