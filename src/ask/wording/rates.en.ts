/** What is said of machines and their published rates. Another language is another file of this shape. */
export const ratesTalk = {
  fault: (place: string, text: string) =>
    `The file of rates cannot be used${place ? `, at ${place}` : ''}: ${text}. Mend the file; no rate is taken from it or from memory.`,
  machine: (name: string, size: string | undefined, horsepower: number | undefined) =>
    [name, size, horsepower === undefined ? undefined : `up to ${horsepower} hp`].filter(Boolean).join(', '),
  coded: (machine: string, code: string) => `${machine} (code ${code})`,
  counted: (count: number, text: string) => (count === 1 ? text : `${count} × ${text}`),
  row: (count: number, machine: string, code: string, rate: string, note: string | undefined) =>
    `${count === 1 ? '' : `${count} × `}${machine}: code ${code}, ${rate}${count === 1 ? '' : ' each'}${note ? ` (${note})` : ''}.`,
  from: (name: string, year: number, source: string, seen: string, note: string | undefined) =>
    `Rates of ${year} from ${name} (${source}; how seen: ${seen}).${note ? ` ${note}` : ''}`,
  which: (said: string, name: string, year: number, code: string) =>
    `Which ${said}? More than one row of ${name} ${year} fits. Choose one, or ask again with its code behind it, as "${code}".`,
  choice: (machine: string, code: string, rate: string, note: string | undefined) =>
    `${code}: ${machine}, ${rate}${note ? ` (${note})` : ''}`,
  none: (said: readonly string[], name: string, year: number) =>
    `${name} ${year} has no rate an hour for: ${said.join(', ')}. Nothing is added up without it.`,
  nameThem: (name: string, year: number) =>
    `Or name the machines, with size or code: their rates are taken from ${name} ${year}.`,
  notUsed: (name: string, year: number) => `Reckoned with the rate you gave; ${name} ${year} was not used.`,
  formula: (total: string, parts: readonly string[]) => `${total} = ${parts.join(' + ')}`,
  sum: (parts: readonly string[]) => parts.join(' + '),
};
