/** What is known, apart from what works with it: a file of its own, which a change of the code leaves as it was. */

export * from '../ask/emergencies.generated.ts';
export * from '../ask/wording/emergency-words.ts';
export * from '../rules/index.generated.ts';
export { heads } from '../rules/words.ts';
export { spanish } from '../rules/words-es.ts';
