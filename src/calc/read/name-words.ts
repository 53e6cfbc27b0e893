/** Letters that begin the name of a binder, emulsion or cutback grade, or of a mix by its size: SS-1h, PG 64-22, RC-250, SP-9.5. */
export const gradeLetters = new Set(
  'ss css rs crs ms cms qs cqs hfms hfrs hfe hfrs rc mc sc pg ac ar sp lmcrs cp pmcrs mwp'.split(' '),
);

/** Of these, the ones read as a grade with a blank before the number; the others are words or units as well. */
export const spacedGrades = new Set('ss css rs crs cms cqs hfms hfrs rc mc sc pg sp'.split(' '));

/** Letters and words that begin the name of a road. */
export const routeWords = new Set(
  'us hwy highway route rt rte sr cr sh fm interstate state-route ruta carretera'.split(' '),
);

/** Second words of a road name: state route 7, county road 12. */
export const routeFirst = new Set(['state', 'county', 'forest', 'farm', 'city', 'township', 'us']);
export const routeSecond = new Set(['route', 'road', 'rd', 'highway', 'hwy', 'rte', 'rt']);

/** Words before a number that only tells one of them from another. */
export const labelWords = new Set([
  ...['sheet', 'page', 'pg', 'section', 'phase', 'step', 'exit', 'item', 'table', 'chapter', 'question', 'bridge'],
  ...['detail', 'appendix', 'option', 'district', 'type', 'class', 'version', 'hoja', 'página', 'pagina', 'paso'],
  ...['astm', 'aashto', 'title'],
]);

/** Words before 911 and 811, the numbers that are dialled. */
export const callWords = new Set(['call', 'called', 'calling', 'dial', 'phone', 'llame', 'llama', 'llamar']);

export const months = new Set(
  'january february march april june july august september october november december jan feb mar apr jun jul aug sept sep oct nov dec'.split(
    ' ',
  ),
);

/** Never the letters of a code, for all that digits follow them glued or after a hyphen: ft2, low-40s, by-12. */
export const notCodes = new Set([
  ...[
    'x',
    'by',
    'at',
    'to',
    'of',
    'and',
    'or',
    'low',
    'mid',
    'high',
    'upper',
    'lower',
    'about',
    'under',
    'over',
    'than',
  ],
  ...['ft', 'in', 'yd', 'yds', 'mi', 'cm', 'mm', 'km', 'lb', 'lbs', 'gal', 'sq', 'sy', 'cy', 'sf', 'cf'],
]);

/** Letters glued between two numbers that join figures: 12by150, 10to12. */
export const gluedJoins = new Set(['x', 'by', 'to', 'or', 'at', 'and', 'por']);

/** Glued to a number, these leave it a number: 5ea, 2ish, and the ordinals (which are words). */
export const gluedWords = new Set(['st', 'nd', 'rd', 'th', 'ish', 'ea', 'pc', 'ct']);

/** After a number these show a sieve: number 4 sieve. */
export const sieveWords = new Set(['sieve', 'screen', 'mesh']);

/** Before "I 80" these show a road and not a person. */
export const onRoadWords = new Set(['on', 'off', 'along', 'near']);

/** Before a number from 1950 to 2049 these show a year. */
export const yearWords = new Set(['in', 'since', 'year', 'until', 'summer', 'spring', 'winter', 'fall', 'en']);

/** Nouns that a small number word or figure turns into one word: a two-lane road, a three-axle truck. */
export const joinedNouns = new Set(['lane', 'way', 'axle']);
