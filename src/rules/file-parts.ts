import { agencyWords as words } from './agency-words.ts';
import { nearest } from './nearest.ts';

/** What is wrong with a file that was sent: the place as a path, and what to do. */
export class FileFault extends Error {
  readonly place: string;
  constructor(place: string, text: string) {
    super(text);
    this.place = place;
  }
}

const longestLine = 200;

/** One line of text. Throws FileFault where it is none. */
export function line(file: Record<string, unknown>, key: string, place = key): string {
  const value = file[key];
  if (
    typeof value !== 'string' ||
    value.trim() === '' ||
    value.length > longestLine ||
    /\p{C}|\p{Zl}|\p{Zp}/u.test(value)
  )
    throw new FileFault(place, words.mustBeText(key, longestLine));
  return value;
}

/** An object. Throws FileFault, with `fault` as its sentence, where it is none. */
export function object(value: unknown, place: string, fault?: string): Record<string, unknown> {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Record<string, unknown>;
  throw new FileFault(place, fault ?? words.mustBeObject(place || words.theFile));
}

/** Throws FileFault at the first key that is not known. */
export function only(sent: Record<string, unknown>, known: readonly string[], place: string): void {
  const stray = Object.keys(sent).find((key) => !known.includes(key));
  if (stray !== undefined)
    throw new FileFault(place ? `${place}.${short(stray)}` : short(stray), unknownName(stray, known));
}

/** Names of other things are shown when there are no more than this. */
const mostShown = 8;
const longestName = 60;

/** A sentence for a name that is not known, with the nearest that is. */
export function unknownName(name: string, known: readonly string[]): string {
  // A letter or two is near to everything.
  const near = name.length > 2 && name.length <= longestName ? nearest(name, known) : undefined;
  return words.noSuchName(short(name), near, known.length <= mostShown ? known : []);
}

/** A name as it is echoed: never a page of it. */
export const short = (name: string): string => (name.length > longestName ? `${name.slice(0, longestName)}…` : name);
