/** The three strengths in which the manual speaks, strongest first. */
export const strengths = ['shall', 'should', 'may'] as const;
export type Strength = (typeof strengths)[number];

/** By strength: what the manual calls such a paragraph, how it is offered, and why it is that one. */
export const strengthWords: Readonly<
  Record<Strength, { readonly heading: string; readonly option: string; readonly why: string }>
> = {
  shall: {
    heading: 'standard',
    option: 'It shall be so: a standard',
    why: 'the manual gives it as a standard: shall. The agency and the plan may ask for more.',
  },
  should: {
    heading: 'guidance',
    option: 'It should be so: guidance',
    why: 'the manual gives it as guidance: should. It is left only with a reason that the person in charge has written down.',
  },
  may: {
    heading: 'option',
    option: 'It may be so: an option',
    why: 'the manual gives it as an option: may. The agency says whether it is taken.',
  },
};
