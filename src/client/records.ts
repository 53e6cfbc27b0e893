/** The records alone: a file of their own, which a change of the code leaves as it was. */
export * from '../rules/index.generated.ts';
