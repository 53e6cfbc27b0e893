/** What the server says of jobs. */
export const job = {
  unknown: 'No job has this address. Check that the whole link was copied, or ask whoever gave it to you.',
  revoked: 'Whoever runs the job took this link back. Ask them for a new one; nothing on the job was lost.',
  full: (most: number) =>
    `The job has ${most} changes, which is all it takes. Export it and go on in a new one; nothing of this was kept.`,
  ownLink: 'That is the link you are here by. Make another one that edits, open it, and revoke this one there.',
  noLink: 'There is no such link.',
  notEditor: 'Only a link that edits may make and revoke links.',
  noChanges: 'Send an object with "changes", a list, and "after", the number of changes you have from here.',
  changeWrong: (at: number, what: string) => `Change ${at + 1}: ${what}`,
  differing: 'A change with this id is here already, and says something else. Make it again with a new id.',
  tooMany: (most: number) => `Send ${most} changes at a time.`,
  sync: 'Sends changes of a job and gets those made elsewhere.',
  synced: 'The changes after those named, with how many the job has; what was sent is on disk.',
} as const;
