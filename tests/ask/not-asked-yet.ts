/** What cannot be asked in the words of the records alone, with the reason. */
const reasons: Readonly<Record<string, readonly string[]>> = {
  'it only hands on the figure of the one kind there is, which was just given: nobody asks for that': [
    'taper-needed-downstream: taper-needed',
    'taper-needed-flagger: taper-needed',
    'taper-needed-merging: taper-needed',
    'taper-needed-shifting: taper-needed',
    'taper-needed-shoulder: taper-needed',
    'work-zone-flaggers: work-zone',
    'work-zone-lane-closed: work-zone',
    'work-zone-shoulder: work-zone',
  ],
};

/** `relation: quantity` that is not found by its name. */
export const notAskedYet: ReadonlySet<string> = new Set(Object.values(reasons).flat());
