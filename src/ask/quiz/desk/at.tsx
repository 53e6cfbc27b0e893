import type { Fields } from './call.ts';
import {
  type Around,
  deskScreen,
  practiceScreen,
  type Shown,
  screens,
  sheetScreen,
  signOffScreen,
  takeScreen,
} from './screen.tsx';

/** Screens that need nothing but the rules: the server and a phone without signal make the same of them. */
const made: Readonly<Record<string, (around: Around, fields: Fields) => Shown>> = {
  [screens.desk]: (around, fields) => deskScreen(around, fields),
  [screens.sheet]: (around, fields) => sheetScreen(around, fields, 'sheet'),
  [screens.key]: (around, fields) => sheetScreen(around, fields, 'key'),
  [screens.tailgate]: (around, fields) => sheetScreen(around, fields, 'tailgate'),
  [screens.take]: (around, fields) => takeScreen(around, fields, false),
  [screens.signOff]: signOffScreen,
  [screens.practice]: practiceScreen,
};

/** Addresses of those screens. */
export const madePaths: readonly string[] = Object.keys(made);

/** The screen at an address; undefined for one that is not made here. */
export const screenAt = (around: Around, path: string, fields: Fields): Shown | undefined =>
  made[path]?.(around, fields);
