import { choice } from '../shapes.ts';
import { taught } from '../sources-work.ts';

export default choice({
  id: 'ravel-state',
  title: 'wear',
  because: 'While only fines are gone a seal still holds the stones; once stones are gone there is depth to fill.',
  sources: [taught],
  question: { text: 'Are only the fines gone, or are stones gone too, so that it is rough or pitted?', ease: 1 },
  options: [
    {
      id: 'deep',
      title: 'stones gone, rough or pitted',
      cues: ['stone gone|missing', 'stone coming+out', 'rough -ride', 'stone rough|pit', 'hole start|forming'],
    },
    {
      id: 'light',
      title: 'only the fines gone',
      cues: [
        'only|just+fines',
        'fines gone',
        'light|lightly ravel|worn',
        'surface gray|grey|dull',
        'little|bit|light|lightly ravel|lose|losing|fines|stone',
        'surface|road dry gray|grey',
        'lose|losing|lost fines',
        'ravel sound otherwise',
        'weathered|oxidized',
        'road|surface weathered|dry|dried',
      ],
    },
  ],
});
