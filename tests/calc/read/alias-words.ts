/**
 * Aliases of units as a person lists them, apart from the reader's own table: the canonical unit, what the reader marks
 * unclear, and the ways it is typed. `exact` ones count only in the case given.
 */
export interface Aliases {
  readonly unit: string;
  readonly unclear?: string;
  readonly words?: string;
  readonly marks?: string;
  readonly exact?: string;
}

/** Words are parted by bars. A number of any kind may stand before each. */
export const aliases: readonly Aliases[] = [
  { unit: 'ft', words: 'ft|ft.|foot|feet|lf|l.f.|lin ft|linear foot|linear feet|pie|pies', marks: "'|’|′|`" },
  { unit: 'in', words: 'in|in.|inch|inches|pulg|pulgada|pulgadas', marks: "\"|''|”|″|′′" },
  { unit: 'yd', unclear: 'yd', words: 'yd|yds|yard|yards|yarda|yardas' },
  { unit: 'mi', words: 'mi|mile|miles|milla|millas' },
  { unit: 'm', unclear: 'm', exact: 'm' },
  { unit: 'm', words: 'meter|meters|metre|metres|metro|metros|mts' },
  { unit: 'mm', words: 'mm', marks: '㎜' },
  { unit: 'cm', words: 'cm' },
  { unit: 'km', words: 'km|kms', marks: '㎞' },
  { unit: 'ft2', words: 'sf|sq ft|sq. ft.|sqft|ft2|ft²|square foot|square feet|s.f.|pie cuadrado|pies cuadrados' },
  {
    unit: 'yd2',
    words:
      'sy|s.y.|sq yd|sq yds|sq. yd.|sq. yds.|yd2|yd²|square yard|square yards|yarda cuadrada|yardas cuadradas|sq/yd',
  },
  { unit: 'acre', words: 'ac|acre|acres' },
  { unit: 'm2', words: 'm2|m²|sq m|metro cuadrado|metros cuadrados', marks: '㎡' },
  { unit: 'ft3', words: 'cf|cu ft|ft3|ft³' },
  { unit: 'yd3', words: 'cy|c.y.|cu yd|cu yds|yd3|yd³|cubic yard|cubic yards|yarda cúbica|yardas cúbicas' },
  { unit: 'm3', words: 'm3|m³|metros cúbicos', marks: '㎥' },
  { unit: 'gal', words: 'gal|gal.|gals|gallon|gallons|galón|galones' },
  { unit: 'L', words: 'l|lt|lts|liter|liters|litre|litres|litro|litros' },
  { unit: 'ton', words: 'ton|tons|tn|short ton|tonelada corta', exact: 'T' },
  { unit: 't', unclear: 't', exact: 't' },
  { unit: 't', words: 'tonne|tonnes|metric ton|metric tons|mt|tonelada métrica|toneladas métricas', exact: 'Mg' },
  { unit: 't', unclear: 'tonelada', words: 'tonelada|toneladas' },
  { unit: 'lb', words: 'lb|lbs|lb.|pound|pounds|libra|libras', marks: '#' },
  { unit: 'lb/yd2', words: 'lb/sy|lbs/SY|lb/yd2|psy|pounds per square yard|lbs./sy' },
  {
    unit: 'lb/yd2/in',
    words:
      'lb/sy/in|lb/SY-in|lbs per sq yd per inch|lb/yd2/in|pounds per square yard per 1-inch depth|lbs a sq yd an inch',
  },
  { unit: 'lb/ft3', words: 'pcf|lb/cf|lb/ft3|pounds per cubic foot' },
  { unit: 'gal/yd2', words: 'gal/sy|gal/yd2|gal/sq yd|gsy|g/sy|gallons per square yard|gal per sq yd|gal./sq. yd.' },
  { unit: 'gal/yd2', unclear: 'gal/yd', words: 'gal per yard|gallons a yard|gal/yd' },
  { unit: 'gal/ft2', words: 'gal per sq ft|gal/sf|gallons per square foot' },
  { unit: 'L/m2', words: 'l/m2|l/m²|litros por metro cuadrado|liters per square meter' },
  { unit: 'gal/min', words: 'gpm|gal/min|gallons a minute|gallons per minute' },
  { unit: 'mph', words: 'mph|m.p.h.|miles an hour|miles per hour|mi/h' },
  { unit: 'km/h', words: 'km/h|kph' },
  { unit: 'ft/min', words: 'fpm|ft/min|feet per minute|feet a minute' },
  { unit: 'ton/h', words: 'tons an hour|tons per hour|tons/hr|tph' },
  { unit: 'degF', words: 'F|°F|deg F|degrees F|grados F|º F' },
  { unit: 'degC', words: 'C|°C|deg C|degrees C|grados C' },
  { unit: 'degF', unclear: 'deg', words: 'degrees|deg', marks: '°' },
  { unit: 's', words: 'sec|secs|second|seconds' },
  { unit: 'min', words: 'min|mins|minute|minutes|minuto|minutos' },
  { unit: 'h', words: 'hr|hrs|hour|hours|hora|horas', exact: 'h' },
  { unit: '%', words: 'percent|pct|por ciento', marks: '%|％' },
];
