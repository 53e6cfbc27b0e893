/** Cards, rules and words to look up, on the phone as from the server. */
export { referencePage as documentAt } from '../ask/views/reference.tsx';

// What both share lies in one file, which packs smaller than many.
import './answers.ts';
