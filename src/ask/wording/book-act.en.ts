/** What is said when something is done on the page of a job. Another language is another file of this shape. */
export const act = {
  notAllowed: (role: string) =>
    role === 'record'
      ? 'Your link lets you write down the day and tick patches off, not change the patches. Ask whoever gave you the link.'
      : 'Your link lets you look, not write. Ask whoever gave you the link.',
  unknownAct: 'That cannot be done here. Reload the page and do it again.',
  noLine: 'That line is not on the job any more. Reload the page.',
  removed: 'Taken off. Undo it in the log of changes below.',
  undone: 'Taken back.',
  notUndone: 'That was changed again since, so there is nothing to take back.',
  nothingTold: 'Say something of the job, for example: mix is $85 a ton, trucks carry 12 tons.',
  nothingUnderstood: 'Nothing of that is known here. Say it with its figure: mix is $85 a ton, 8 people, 45 mph.',
  /** Put before a part that says nothing by itself: a price is understood where a cost is asked. */
  costAsked: 'cost of the job, ',
  partLost: (parts: readonly string[]) =>
    `Not understood, so not taken: ${parts.map((part) => `“${part}”`).join(', ')}.`,
  nothingChanged: 'Nothing was changed.',
  emptyLine: 'Fill in something first.',
  settled: 'Settled.',
  noClash: 'That was settled already.',
  rulesOn: "The agency's rules hold for this job now.",
  rulesOff: 'The general rules hold for this job now.',
  rulesNoJson: "An agency's rules are a JSON file. Paste it whole, from { to }.",
  rulesLong: 'These rules are too long: 16 KiB at most.',
  rulesFault: (line: number, place: string, what: string) =>
    `The agency's rules were not taken. Line ${line}${place ? `, at ${place}` : ''}: ${what}`,
  ratesOn: (name: string, year: number, rows: number) =>
    `Rates of ${year} from ${name} hold for this job now: ${rows} ${rows === 1 ? 'row' : 'rows'}.`,
  ratesOff: 'No schedule of rates holds for this job any more.',
  ratesNoJson: 'A schedule of rates is a JSON file. Paste it whole, from { to }, or choose the file.',
  ratesLong: 'This schedule is too long: 64 KiB at most.',
  ratesFault: (line: number, place: string, what: string) =>
    `The rates were not taken. Line ${line}${place ? `, at ${place}` : ''}: ${what}. Mend the file and send it again; nothing of it was taken.`,
  joined: (count: number) =>
    count === 0 ? 'Nothing in it was new.' : `Joined: ${count} ${count === 1 ? 'change' : 'changes'}.`,
  taken: (count: number) => `${count} ${count === 1 ? 'patch' : 'patches'} put on the job.`,
  heldBack: (count: number) =>
    `${count} ${count === 1 ? 'thing is' : 'things are'} wrong in the rows that stand in the box below. Mend them and send them again.`,
  row: (row: number, fault: string) => `Row ${row}. ${fault}`,
  size: 'Size',
  misfit: (title: string, type: string) =>
    ({
      initials: `${title}: give initials, four letters at most. Names are not kept.`,
      date: `${title}: write the day like 2026-05-04.`,
      clock: `${title}: write the time like 07:30.`,
      choice: `${title}: take one of the list.`,
      line: `${title}: take one of the list.`,
      text: `${title}: that is too long. Shorten it.`,
    })[type] ?? `${title}: that does not fit.`,
  fields: {
    name: 'Name of the job',
    road: 'Road',
    direction: 'Direction of work',
    'day-tons': 'Tons a day',
    note: 'Note',
    label: 'Patch',
    station: 'From',
    'station-end': 'To',
    lane: 'Lane or side',
    defect: 'Defect',
    repair: 'Repair',
    readings: 'Depth readings',
    day: 'Day',
    photos: 'Photos, what they show',
    time: 'Time',
    patch: 'Patch',
    ticket: 'Ticket',
    truck: 'Truck',
    who: 'Initials',
    machine: 'Machine',
    task: 'Task',
    sky: 'Sky',
    what: 'What',
    done: 'Done',
    rules: "Agency's rules",
    rates: 'Rates of machines',
    order: 'Order of work',
    machines: 'Machines on the job',
    gone: 'On the job',
  } as Readonly<Record<string, string>>,
} as const;
