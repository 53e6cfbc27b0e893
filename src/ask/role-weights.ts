/** How much each kind of evidence weighs. Words beside a figure beat its place in a group, which beats what is asked. */
export const weights = {
  /** For the whole title of a quantity right before the figure. */
  title: 30,
  after: 10,
  /** For the thing a figure is of, right after it. */
  of: 6,
  /** For a word right after, nothing between. */
  beside: 12,
  /** For the size of each of the things counted before it. */
  sized: 10,
  /** The same for a count: "a 2 lift patch". */
  counted: 18,
  before: 8,
  /** That a word or the group says so at all: it settles a tie. */
  told: 0.5,
  /** Taken off for each word further away. */
  further: 2,
  /** For a word that stands before any figure, like "at". */
  weak: 3,
  /** Taken off for a word beyond one of these: in "taper at 55" the speed is told, and hardly the taper. */
  beyondWeak: 8,
  /** For a quantity with a field of its own that is spoken of. */
  setting: 5,
  /** For one whose own field is not spoken of. */
  outOfSetting: -1.5,
  /** For one of several that are added up, by its own name. */
  named: 4,
  group: 6,
  outOfGroup: -6,
  asked: 9,
  /** For the figure that a limit judges, where no word tells: and where the job has one already. */
  judged: 4,
  judgedAgain: 2,
  near: [5, 5, 4, 3, 2],
  /** For one that has nothing to do with what is asked. */
  far: -4,
  implausible: -9,
  sought: -30,
  /** For one the job has a figure of, less for every tenfold it differs. */
  kept: 5,
  tenfold: 4,
  /** For a default that no word speaks of. */
  untold: -1,
  count: 3,
  plain: 1,
};
