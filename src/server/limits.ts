/** Longest question, in UTF-16 positions: what a person types, not what a program pours in. */
export { longestQuestion as questionLimit } from '../ask/longest.ts';
/** Largest body of an API request, in bytes: a job of 16 KiB, a question, an agency's rules and a file of rates. */
export const bodyLimit = 48 * 1024;
/** Largest body of the page's form: the same, and the earlier questions, as forms encode them. */
export const formLimit = 128 * 1024;
/** Longest line of `--jsonl`, in bytes. */
export const lineLimit = bodyLimit;
