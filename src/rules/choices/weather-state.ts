import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'weather-state',
  title: 'weather',
  because:
    'Water under or on the mix keeps it from sticking and cools it, so it is laid and rolled only while it stays dry.',
  sources: [commonPractice],
  question: { text: 'Is it dry, is rain on the way, or is it raining?', ease: 1 },
  options: [
    {
      id: 'rain-due',
      title: 'rain on the way',
      cues: [
        'rain|storm|shower|drizzle by|around|before -no+rain|storm|shower|chance',
        'shower|drizzle|storm chance|percent|later|expect|forecast -no+rain|storm|shower|chance',
        'rain|shower chance|percent -no+rain|storm|shower|chance',
        'rain come|coming|forecast|due|later|soon|move|call|expect|chance -no+rain|storm|shower|chance',
        'rain on+way -no+rain|storm|shower|chance',
        'storm|cloud come|coming|build -no+rain|storm|shower|chance',
        'rain #time -no+rain|storm|shower|chance',
        'rain in+hour|minute|afternoon -no+rain|storm|shower|chance',
        'rain tonight|tomorrow -no+rain|storm|shower|chance',
        'rain at+#number -no+rain|storm|shower|chance',
        'rain radar|forecast -no+rain|storm|shower|chance',
        'storm|rain moving|move|building|headed|heading',
        'storm hit|supposed|call -no+rain|storm|shower|chance',
      ],
    },
    {
      id: 'raining',
      title: 'raining',
      cues: [
        'raining -if -when -no -not -quit|stop|stopped|over',
        'rain -come -forecast -due -chance -later -soon -if -when -tomorrow -tonight -no -expect -before -after -call -way -hour -hit -got -wash -tack -stand|stands|sit|sits|puddle|pond|drain|run|runs',
        'drizzle|sprinkle|pour -stop|stopped|quit|over|done|dried|night|yesterday|earlier',
        'in|through+rain',
        'rain fall',
      ],
    },
    {
      id: 'dry',
      title: 'no rain',
      cues: [
        'rain|raining|storm|shower|drizzle quit|stopped|over|pass|gone|done|moved -@check -will -due -wet|damp|puddle|standing',
        'dried+out',

        'no+rain -if',
        'weather dry|clear|fair',
        'clear+sky',
        'dry+day',
        'sunny',
        'not+rain|raining',
        'no+rain|storm till|until|due|coming',
      ],
    },
  ],
});
