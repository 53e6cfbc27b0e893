/** What the job book says. Another language is another file of this shape. */
export const book = {
  wrong: {
    change: 'That is no change of a job book. Reload the page and make it again.',
    stamp: 'A change must say when and on which phone it was made. Reload the page and make it again.',
    initials: 'Give initials, four letters at most. Names are not kept.',
    line: 'A change must name the line it is for.',
    newer: (what: string) =>
      `"${what}" is not known here: it comes from a newer version, or is no part of a job book. Nothing was taken over; update this side first.`,
    json: 'That is no saved job book. Take a file that Export wrote, or paste a list with headings.',
    newerBook: 'This job was saved by a newer version of Bladehand. Update this one first; nothing was changed.',
    cell: (field: string) => `What was given for "${field}" does not fit it.`,
  },
} as const;
