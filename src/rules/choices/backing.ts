import { choice, type Source } from '../shapes.ts';

const osha: Source = { document: '29 CFR 1926.601(b)(4)', issuer: 'OSHA', seen: 'restated' };

export default choice({
  id: 'backing',
  title: 'trucks backing',
  because:
    'A driver backing a dump truck sees nothing close behind it; the people killed are the ones he knew were there.',
  sources: [osha],
  options: [
    {
      id: 'lost-sight',
      title: 'backing with the spotter out of sight',
      cues: ['spotter lost|lose|unseen|gone', 'spotter not|unseen|lost see|driver|mirror|sight'],
    },
    {
      id: 'no-spotter',
      title: 'backing with no spotter',
      cues: [
        'nobody|no|without|not alarm truck|back',
        'never|not spotter behind|back|truck|use|put',
        'no+spotter',
        'without spotter',
        'truck back alone',
        'nobody|no|without spotter',
        'nobody watch|behind|back truck|back',
        'spotter not|gone|left|lunch',
        'back alone|self|himself truck',
        'nobody|no|without spotter|watch',
        'spotter lunch|gone|left|not',
      ],
    },
    {
      id: 'spotter',
      title: 'one spotter in sight, one set of signals',
      cues: [
        'spotter truck|back -need -who -no -without -nobody -not -gone',
        'one spotter -no -not -lost',
        'spotter in+view|sight each|truck',
      ],
    },
  ],
  question: { text: 'Does one spotter, in sight of the driver, back each truck?', ease: 1 },
});
