/** Sentences round a card. Another language is another file of this shape. */
export const cardWords = {
  basis: (marks: readonly string[]) => `Basis: ${marks.join('; ')}.`,
  mark: {
    published: (document: string) => document,
    restated: (document: string) => `${document} (as restated by others)`,
    practice: () => 'common practice',
    agency: () => "your agency's rules decide",
    memory: () => 'from memory, to be confirmed',
    derived: () => 'worked out',
  },
  byAgency: (figure: string, agency: string) => `${figure} (${agency})`,
  callNow: 'Call the emergency number now: 911 in the US, else your local one.',
  tellThem: 'Give the road, the direction and the milepost; send one person to meet them; flaggers hold both ways.',
  ifItHappens: 'If it happens, the emergency number comes first: 911 in the US, else your local one.',
  notADoctor: 'First aid only, not a doctor: what the dispatcher and the medics say goes first.',
  plan: 'A planning aid: the approved plan rules, and a trained person sets it up and may stop it. Cones stop nobody.',
  noCertificate: 'It certifies nobody as a flagger or an operator.',
} as const;
