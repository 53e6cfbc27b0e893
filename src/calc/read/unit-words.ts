import type { Unit } from '../units.ts';

/** How a unit is typed. One-word aliases also stand with a hyphen or glued to the number (12-foot, 12ft). */
export interface UnitWords {
  /** `g` counts only in g/sy, where it is a gallon. */
  readonly unit: Unit | 'g';
  /** Abbreviations, which may carry full stops. */
  readonly short?: readonly string[];
  /** Whole words. */
  readonly long?: readonly string[];
  /** Whole words of Spanish. */
  readonly spanish?: readonly string[];
  /** Letters read only in the case given (M2, KM/H and the like apart). */
  readonly exact?: readonly string[];
  /** Set when the unit can mean two things. */
  readonly unclear?: string;
  /** How many of `unit` one of these is, where that is not 1. */
  readonly times?: number;
}

export const unitWords: readonly UnitWords[] = [
  {
    unit: 'ft',
    short: ['ft', 'fts', 'lf', 'lin ft', 'lnft', 'linear ft', 'lineal ft'],
    long: ['foot', 'feet', 'feets', 'footer', 'footers'],
    spanish: ['pie', 'pies'],
  },
  {
    unit: 'ft',
    long: ['linear foot', 'linear feet', 'lineal foot', 'lineal feet', 'lin foot', 'lin feet'],
    spanish: ['pie lineal', 'pies lineales'],
  },
  {
    unit: 'in',
    short: ['in', 'ins', 'pulg'],
    long: ['inch', 'inches', 'inchs', 'incher'],
    spanish: ['pulgada', 'pulgadas'],
  },
  {
    unit: 'yd',
    short: ['yd', 'yds', 'yrd', 'yrds'],
    long: ['yard', 'yards'],
    spanish: ['yarda', 'yardas'],
    unclear: 'yd',
  },
  {
    unit: 'mi',
    short: ['mi'],
    long: ['mile', 'miles', 'lane mile', 'lane miles'],
    spanish: ['milla', 'millas'],
  },
  {
    unit: 'mm',
    short: ['mm'],
    long: ['millimeter', 'millimeters', 'millimetre', 'millimetres'],
    spanish: ['milímetro', 'milímetros'],
  },
  {
    unit: 'cm',
    short: ['cm', 'cms'],
    long: ['centimeter', 'centimeters', 'centimetre', 'centimetres'],
    spanish: ['centímetro', 'centímetros'],
  },
  { unit: 'm', exact: ['m'], unclear: 'm' },
  {
    unit: 'm',
    short: ['mts', 'mtr', 'mtrs'],
    long: ['meter', 'meters', 'metre', 'metres'],
    spanish: ['metro', 'metros'],
  },
  {
    unit: 'km',
    short: ['km', 'kms'],
    long: ['kilometer', 'kilometers', 'kilometre', 'kilometres'],
    spanish: ['kilómetro', 'kilómetros'],
  },
  { unit: 'ft', short: ['sta', 'stas'], long: ['station', 'stations'], unclear: 'station', times: 100 },

  {
    unit: 'ft2',
    short: ['sf', 'sq ft', 'sqft', 'sqr ft'],
    long: ['square foot', 'square feet', 'sqaure foot', 'sqaure feet', 'sq foot', 'sq feet'],
    spanish: ['pie cuadrado', 'pies cuadrados'],
  },
  {
    unit: 'yd2',
    short: ['sy', 'sys', 'sq yd', 'sq yds', 'sqyd', 'sqyds', 'square yd', 'square yds'],
    long: ['square yard', 'square yards', 'sqaure yard', 'sqaure yards', 'sq yard', 'sq yards'],
    spanish: ['yarda cuadrada', 'yardas cuadradas'],
  },
  {
    unit: 'm2',
    short: ['sq m', 'sqm'],
    long: ['square meter', 'square meters', 'square metre', 'square metres'],
    spanish: ['metro cuadrado', 'metros cuadrados'],
  },
  { unit: 'acre', short: ['ac'], long: ['acre', 'acres'], spanish: ['acres'] },
  { unit: 'ha', short: ['ha'], long: ['hectare', 'hectares'], spanish: ['hectárea', 'hectáreas'] },

  {
    unit: 'ft3',
    short: ['cf', 'cu ft', 'cuft'],
    long: ['cubic foot', 'cubic feet', 'cu foot', 'cu feet'],
    spanish: ['pie cúbico', 'pies cúbicos'],
  },
  {
    unit: 'yd3',
    short: ['cy', 'cys', 'cu yd', 'cu yds', 'cuyd', 'cuyds', 'cubic yd', 'cubic yds'],
    long: ['cubic yard', 'cubic yards', 'cu yard', 'cu yards'],
    spanish: ['yarda cúbica', 'yardas cúbicas'],
  },
  {
    unit: 'm3',
    short: ['cu m', 'cum'],
    long: ['cubic meter', 'cubic meters', 'cubic metre', 'cubic metres'],
    spanish: ['metro cúbico', 'metros cúbicos'],
  },
  {
    unit: 'gal',
    short: ['gal', 'gals', 'gl', 'gls'],
    long: ['gallon', 'gallons', 'galon', 'galons', 'galllon', 'galllons'],
    spanish: ['galón', 'galones'],
  },
  {
    unit: 'L',
    short: ['l', 'lt', 'lts', 'ltr', 'ltrs'],
    long: ['liter', 'liters', 'litre', 'litres'],
    spanish: ['litro', 'litros'],
  },
  { unit: 'g', short: ['g'] },
  { unit: 'kg', long: ['gram', 'grams'], times: 0.001 },

  {
    unit: 'ton',
    exact: ['T'],
    short: ['tn', 'tns'],
    long: ['ton', 'tons', 'short ton', 'short tons', 'us ton', 'us tons'],
    spanish: ['tonelada corta', 'toneladas cortas'],
  },
  { unit: 't', exact: ['t'], long: ['tone', 'tones'], unclear: 't' },
  {
    unit: 't',
    exact: ['Mg'],
    short: ['mt'],
    long: ['tonne', 'tonnes', 'metric ton', 'metric tons', 'metric tonne', 'metric tonnes'],
    spanish: ['tonelada métrica', 'toneladas métricas'],
  },
  { unit: 't', spanish: ['tonelada', 'toneladas'], unclear: 'tonelada' },
  { unit: 'lb', short: ['lb', 'lbs'], long: ['pound', 'pounds'], spanish: ['libra', 'libras'] },
  {
    unit: 'kg',
    short: ['kg', 'kgs'],
    long: ['kilogram', 'kilograms', 'kilo', 'kilos'],
    spanish: ['kilogramo', 'kilogramos'],
  },

  { unit: 'lb/ft3', short: ['pcf'] },
  { unit: 'lb/yd2', short: ['psy'] },
  { unit: 'gal/yd2', short: ['gsy', 'gpsy'] },
  { unit: 'gal/min', short: ['gpm'] },
  { unit: 'L/min', short: ['lpm'] },
  { unit: 'ft/min', short: ['fpm'] },
  { unit: 'mph', short: ['mph'] },
  { unit: 'km/h', short: ['kph', 'kmh', 'kmph'] },
  { unit: 'ton/h', short: ['tph'] },

  { unit: 's', short: ['s', 'sec', 'secs'], long: ['second', 'seconds'], spanish: ['segundo', 'segundos'] },
  { unit: 'min', short: ['min', 'mins'], long: ['minute', 'minutes'], spanish: ['minuto', 'minutos'] },
  { unit: 'h', exact: ['h'], short: ['hr', 'hrs'], long: ['hour', 'hours'], spanish: ['hora', 'horas'] },

  { unit: 'degF', short: ['deg', 'degs'], long: ['degree', 'degrees', 'degress'], unclear: 'deg' },
  { unit: 'degF', spanish: ['grado', 'grados'], unclear: 'grados' },
  {
    unit: 'degF',
    short: ['f', 'degf', 'deg f'],
    long: ['fahrenheit', 'degree f', 'degrees f', 'degrees fahrenheit', 'deg fahrenheit'],
    spanish: ['grados f', 'grados fahrenheit'],
  },
  {
    unit: 'degC',
    short: ['c', 'degc', 'deg c'],
    long: ['celsius', 'centigrade', 'degree c', 'degrees c', 'degrees celsius', 'degrees centigrade', 'deg celsius'],
    spanish: ['grados c', 'grados celsius', 'grados centígrados'],
  },

  { unit: '%', short: ['pct'], long: ['percent', 'per cent'], spanish: ['por ciento', 'porciento'] },
  { unit: 'USD', exact: ['USD'], long: ['dollar', 'dollars', 'buck', 'bucks', 'usd'], spanish: ['dólar', 'dólares'] },
];
