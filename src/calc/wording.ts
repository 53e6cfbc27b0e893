import { fromBase } from './quantity.ts';
import type { Unit } from './units.ts';
import { english } from './wording/english.ts';
import type { FigureWords } from './wording/language.ts';
import { feetAndInches, type Numeral, type NumeralOptions, numeralOf } from './wording/numeral.ts';

export type { Rounding } from './rounding.ts';

export interface WordingOptions extends NumeralOptions {
  /** Feet as feet and inches: `5 ft 6 in`. */
  readonly feetInches?: boolean;
  readonly language?: FigureWords;
}

/**
 * A figure in words, from a number in base units: `44.0 tons`, `1,200 sq ft`, `0.083 gal/sq yd`.
 *
 * Computed inches go to the nearest eighth with the decimal beside them: `3/4 in (0.75 in)`, and `about 7/8 in (0.833 in)`
 * where the eighth is not exact; a whole inch needs none: `2 in`. Under an eighth the decimal stands alone. A given
 * figure is echoed, in inches as a fraction when it is a whole number of sixteenths: `1 1/2 in`, `1.3 in`.
 *
 * Throws RangeError when the figure is not finite, or too large to write out.
 */
export function sayFigure(base: number, unit: Unit, options: WordingOptions = {}): string {
  const { language = english } = options;
  const number = fromBase(base, unit);
  const parts = options.feetInches && unit === 'ft' ? feetAndInches(number, options) : undefined;
  if (parts) return (number < 0 ? '-' : '') + sayFeetAndInches(parts, language);
  const { text, exact, about } = numeralOf(number, unit, options);
  const figure = withUnit(local(text, language), unit, language);
  const said = about ? language.about(figure) : figure;
  return exact === undefined ? said : language.beside(said, withUnit(local(exact, language), unit, language));
}

/** A range in words: `42.0 to 48.0 tons`; ends that come out alike are said once. Throws RangeError when `low` is above `high`. */
export function sayRange(low: number, high: number, unit: Unit, options: WordingOptions = {}): string {
  if (low > high) throw new RangeError(`a range runs from low to high, not from ${low} to ${high}`);
  const { language = english } = options;
  if (options.feetInches && unit === 'ft') {
    const [one, other] = [sayFigure(low, unit, options), sayFigure(high, unit, options)];
    return one === other ? one : language.range(one, other);
  }
  return sayEnds(
    [low, high].map((base) => numeralOf(fromBase(base, unit), unit, options)),
    unit,
    language,
  );
}

/** The two ends of a range, with unit and decimals beside them. */
function sayEnds(numerals: readonly Numeral[], unit: Unit, language: FigureWords): string {
  const join = (of: (numeral: Numeral) => string): string => {
    const texts = [...new Set(numerals.map((numeral) => local(of(numeral), language)))];
    return withUnit(texts.reduce(language.range), unit, language);
  };
  const figure = join(({ text }) => text);
  const said = numerals.some(({ about }) => about) ? language.about(figure) : figure;
  return numerals.some(({ exact }) => exact)
    ? language.beside(
        said,
        join(({ exact, text }) => exact ?? text),
      )
    : said;
}

function sayFeetAndInches([feet, inches]: readonly [string, string], language: FigureWords): string {
  const said = (text: string, unit: Unit): string => withUnit(local(text, language), unit, language);
  if (inches === '0') return said(feet, 'ft');
  return feet === '0' ? said(inches, 'in') : `${said(feet, 'ft')} ${said(inches, 'in')}`;
}

/** A number with its unit; a minus sign goes before a unit that stands in front: -$5. */
function withUnit(number: string, unit: Unit, { units }: FigureWords): string {
  const template = units[unit][number === '1' ? 0 : 1];
  if (number.startsWith('-') && !template.startsWith('#')) return `-${template.replace('#', number.slice(1))}`;
  return template.replace('#', number);
}

/** A decimal text with the signs of the language: 14,414.4. */
function local(text: string, { decimal, thousands }: FigureWords): string {
  const [whole = '', rest] = text.split('.');
  const grouped = whole.length < 4 ? whole : whole.replace(/\B(?=(?:\d{3}){1,7}(?!\d))/g, thousands);
  return rest === undefined ? grouped : `${grouped}${decimal}${rest}`;
}
