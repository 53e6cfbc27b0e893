import type { Unit } from '../../calc/units.ts';

/** How machines, their sizes and their costs are typed. Another language is another file of this shape. */
export const heardInRates: {
  readonly sizes: Readonly<Record<string, Unit | 'hp'>>;
  readonly counts: Readonly<Record<string, number>>;
  /** A size right before a machine. */
  readonly sizeBefore: RegExp;
  /** A size right behind it. */
  readonly sizeAfter: RegExp;
  /** How many of it. */
  readonly countBefore: RegExp;
  /** "Two motor graders": words that no row has, between the number or the size of machines and their kind. */
  readonly wordsBetween: RegExp;
  /** A code right behind it. */
  readonly codeAfter: RegExp;
  /** What makes a number no code. */
  readonly unitNext: RegExp;
  /** A code without its machine. */
  readonly codeAlone: RegExp;
  /** One more thing in a list of machines. */
  readonly another: RegExp;
  readonly noMachine: readonly string[];
  readonly money: RegExp;
  readonly hourly: RegExp;
} = {
  // Longer spellings first: the first that fits is taken.
  sizes: {
    horsepower: 'hp',
    hp: 'hp',
    'cubic yards': 'yd3',
    'cubic yard': 'yd3',
    'cu yd': 'yd3',
    yd3: 'yd3',
    yards: 'yd3',
    yard: 'yd3',
    yd: 'yd3',
    gallons: 'gal',
    gallon: 'gal',
    gal: 'gal',
    inches: 'in',
    inch: 'in',
    foot: 'ft',
    feet: 'ft',
    ft: 'ft',
    in: 'in',
    tons: 'ton',
    ton: 'ton',
    m: 'm',
  },
  counts: { a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 },
  noMachine: [
    'hour',
    'day',
    'week',
    'month',
    'shift',
    'job',
    'patch',
    'lift',
    'road',
    'mile',
    'ton',
    'half',
    'full',
    'few',
  ],
  money: /\b(?:costs?|costing|rates?|prices?|priced|dollars?|charges?|bill|money|rent|rental|pay|expensive)\b|\$/i,
  hourly:
    /\bhourly\b|\b(?:an|per|each|by the) hour\b|\/\s?hr?\b|\brates? (?:for|of) (?:an?|the|my|our|two|three|\d)\b/i,
  sizeBefore:
    /\b(\d+(?:\.\d+)?)[\s-]*(horsepower|hp|cubic yards?|cu yd|yd3|yards?|yd|gallons?|gal|inches|inch|foot|feet|ft|in|tons?|m)\.?[\s-]*$/i,
  sizeAfter:
    /^(?:\s*,)?\s*(?:(?:of|with)\s+)?(\d+(?:\.\d+)?)[\s-]*(horsepower|hp|cubic yards?|cu yd|yd3|yards?|yd|gallons?|gal|inches|inch|foot|feet|ft|in|tons?|m)\.?(?![a-z0-9])/i,
  countBefore: /(?:^|\s)(\d{1,2}|a|an|one|two|three|four|five|six)\s+$/i,
  wordsBetween:
    /(?:(?:^|\s)(?:\d{1,2}|a|an|one|two|three|four|five|six)|(\d+(?:\.\d+)?)[\s-]*(horsepower|hp|cubic yards?|cu yd|yd3|yards?|yd|gallons?|gal|inches|inch|foot|feet|ft|in|tons?|m)\.?)[\s-]+((?:(?!(?:and|or|plus|with|does|do|for|of|the|a|an|my|our|this|that|cost|costs|rate|lift|lifts|pass|passes|crew|people|hands|at|per|each|ft|feet|foot|in|inch|inches|yd|yards?|m|tons?|t|gal|gallons?|hours?|hrs?|h|days?|min|minutes?|%|x)\b)[a-z]+[\s-]+){1,2})$/i,
  codeAfter: /^[\s,(]*(code\s+|#)?([a-z0-9][a-z0-9.-]*[a-z0-9])/i,
  unitNext:
    /^[\s-]*(?:ft|feet|foot|in|inch|inches|yd|yards?|m|tons?|t|gal|gallons?|hours?|hrs?|h|days?|min|minutes?|%|x)(?![a-z])/i,
  codeAlone: /\bcode\s+([a-z0-9][a-z0-9.-]*[a-z0-9])/gi,
  another: /(?:^|,|\band\b|\bplus\b|\bwith\b|\bdoes\b|\bdo\b|\bfor\b|\bof\b)\s*an?\s+([a-z]+)/gi,
};
