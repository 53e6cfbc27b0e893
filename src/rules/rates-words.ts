/** What is said of a file of rates that cannot be used. Another language is another file of this shape. */
export const ratesWords = {
  mustBeYear: 'year must be the year of the schedule, as 2025, without quotes',
  mustBeRows: (most: number) => `rates must be a list of rows, in brackets: at least one and ${most} at most`,
  mustBeCode: 'code must be in quotes, up to 12 letters and digits, as "8331"',
  mustBeMachine:
    'machine must say what it is in plain words, its kind last, as "dump truck": letters, digits, spaces and hyphens, 60 at most',
  mustBePower: 'horsepower must be a number above 0, without quotes',
  implausible: (rate: number) => `${rate} is outside what a machine costs an hour (0.01 to 5000)`,
  mustBeUnit: 'unit must be "USD/h"; where the schedule prints none, write "", and the row is never added up',
  mustBeSize: 'unit must be one of length, area, volume or mass, as "ft"',
  twice: (code: string, before: string) => `code ${code} stands at ${before} already: keep one of them`,
};
