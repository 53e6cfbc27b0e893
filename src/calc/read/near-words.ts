/** Words whose nearness to a number tells what the number or the word `in` is. */

/** What a length is along: "2 in 12 wide" is two inches and a width; "5 foot 6 wide" one length. */
export const acrossWords = new Set(['wide', 'long', 'across', 'tall', 'high', 'ancho', 'largo', 'width', 'length']);

/** What only a thickness is said to be: "12 ft 2 in deep" is a width and a depth, not 12 ft 2 in. */
export const throughWords = new Set([
  ...['deep', 'thick', 'depth', 'thickness', 'lift', 'lifts', 'mat', 'compacted', 'loose', 'rolled', 'overlay'],
  ...['profundidad', 'espesor', 'grueso', 'profundo'],
]);

/** After "inch" with no number before it, these show one inch: 12 wide 300 long inch deep. */
export const liftWords = new Set(['deep', 'thick', 'lift', 'lifts', 'mat', 'overlay', 'profundidad', 'espesor']);

/** Before "inch deep" these show that no inch is counted: how many inch deep, per inch thick. */
export const uncountedInch = new Set([
  ...['many', 'much', 'per', 'each', 'every', 'which', 'what', 'few', 'several', 'some', 'couple', 'by', 'this'],
  ...['that', 'square', 'sq', 'cubic', 'cu', 'next', 'last', 'extra', 'another', 'other', 'por', 'cada', 'the', 'no'],
]);

/** A number before one of these is a measure whose unit was left out. */
export const roleWords = new Set([...acrossWords, ...throughWords]);

/** After `in`, these show the preposition: 3 in an hour, 10 in the morning, 4 in all. */
export const placeWords = new Set([
  ...['a', 'an', 'the', 'my', 'our', 'your', 'his', 'her', 'their', 'this', 'that', 'these', 'those', 'its', 'it'],
  ...[
    'each',
    'every',
    'any',
    'one',
    'all',
    'half',
    'another',
    'both',
    'some',
    'total',
    'case',
    'front',
    'line',
    'place',
  ],
  ...['between', 'here', 'there', 'town', 'traffic', 'time', 'way', 'order', 'hand', 'service', 'use', 'stock', 'a.m'],
  ...[
    'morning',
    'afternoon',
    'evening',
    'winter',
    'summer',
    'spring',
    'fall',
    'rain',
    'sun',
    'shade',
    'series',
    'rows',
  ],
  ...['january', 'february', 'march', 'april', 'may', 'june', 'july', 'august', 'september', 'october', 'november'],
  ...[
    'december',
    'progress',
    'sequence',
    'which',
    'what',
    "what's",
    'theory',
    'practice',
    'spanish',
    'english',
    'metric',
  ],
]);

/** After a number, these show that the number before `in` is in inches: 2 in 12 ft, 2 in 300 x 12. */
export const lengthWords = new Set([
  'ft',
  'foot',
  'feet',
  'x',
  'by',
  'yd',
  'yds',
  'm',
  'mi',
  'mile',
  'miles',
  ...acrossWords,
]);

/** "A ton of" one of these is a weight; a ton of cracks is many cracks. */
export const materials = new Set([
  ...['mix', 'premix', 'asphalt', 'blacktop', 'hot', 'cold', 'hotmix', 'coldmix', 'hma', 'wma', 'plant', 'material'],
  ...['emulsion', 'tack', 'binder', 'oil', 'stone', 'rock', 'gravel', 'sand', 'aggregate', 'chips', 'millings', 'rap'],
  ...[
    'it',
    'that',
    'this',
    'stuff',
    'the',
    'our',
    'your',
    'my',
    'patch',
    'patching',
    'bituminous',
    'compacted',
    'loose',
  ],
  ...['mezcla', 'asfalto', 'material', 'premezcla'],
]);

/** Before "a ton" or "an hour", these show a rate: how many loads an hour, how much a ton. */
export const countedWords = new Set(['loads', 'passes', 'times', 'trucks', 'much', 'once', 'twice', 'dollars', 'per']);

/** Words that stand for a whole end of thought, where a number ends before it: `one of them`, `which one is`. */
export const afterPronoun = new Set([
  ...['of', 'is', 'are', 'was', 'were', 'do', 'does', 'did', 'to', 'for', 'in', 'on', 'at', 'with', 'and', 'or', 'the'],
  ...[
    'a',
    'an',
    'i',
    'we',
    'you',
    'he',
    'they',
    'it',
    'that',
    'which',
    'who',
    'wont',
    "won't",
    'will',
    'can',
    'should',
  ],
  ...[
    'has',
    'had',
    'would',
    'could',
    'goes',
    'comes',
    'gets',
    'says',
    'said',
    'then',
    'when',
    'if',
    'but',
    'so',
    'than',
  ],
  ...[
    'more',
    'here',
    'there',
    'first',
    'last',
    'next',
    'another',
    'by',
    'from',
    'looks',
    'works',
    'if',
    'another',
    'use',
  ],
]);

/** Before `one`, these show the pronoun: which one, the big one. */
export const beforePronoun = new Set([
  ...[
    'which',
    'this',
    'that',
    'the',
    'each',
    'every',
    'no',
    'any',
    'another',
    'big',
    'small',
    'other',
    'right',
    'wrong',
  ],
  ...['good', 'bad', 'last', 'first', 'next', 'new', 'old', 'better', 'best', 'some', 'worst', 'same', 'whole', 'only'],
]);
