/** What the quiz command says of its own. */
export const quizCommand = {
  help: `Makes a quiz from the rules: the same seed makes the same set.

  npm run --silent quiz -- --topic rolling --count 10 --level easy --seed a
  npm run --silent quiz -- --seat flagger --count 12 --format qti3 -o flagger.zip
  npm run --silent quiz -- --topic tack,mix --variant B --format csv -o b.csv

  --topic TOPIC           what it is on; several with commas; none: everything
  --seat SEAT             for whom: his own topics, and the questions that must be right
  --level LEVEL           easy, medium or hard; several with commas
  --kind KIND             true-false, one, many, order or number; several with commas
  --count N               how many questions (10)
  --seed TEXT             any text; left out, it is made from the rest
  --variant A|B           B: the same blueprint with other figures in another order
  --about RECORD          a record that has to come up, for example fault/washboards; several with commas
  --units us|metric       figures in feet or in meters (us)
  --format FORMAT         text (default), json, csv or qti3
  --no-key                text without the answer key
  --spreadsheet           CSV with the mark by which a spreadsheet knows its letters
  -o, --output FILE       into a file
  -h, --help              this text

Exit status: 0 made, 1 a fault of ours or a file that cannot be written, 2 a call that cannot be read,
4 no such set can be had.
`,
  tryHelp: 'Try: npm run --silent quiz -- --help',
  badFormat: (format: string) => `"${format}" is no format. Take text, json, csv or qti3.`,
  badVariant: (variant: string) => `"${variant}" is no variant. Take A or B.`,
  badUnits: (units: string) => `"${units}" is no system of units. Take us or metric.`,
  badCount: (count: string) => `"${count}" is no number of questions. Give a whole number, for example --count 10.`,
  extra: (word: string) => `"${word}" is not understood. Say what it is, for example --topic ${word}.`,
  needsFile: 'A QTI package is no text to look at. Say where it goes: -o quiz.zip',
  notWritten: (file: string, why: string) => `${file} could not be written: ${why}`,
  written: (file: string, count: number) => `${file}: ${count} questions`,
} as const;

/** What is said of a file that cannot be had. */
export const quizFiles = {
  badFormat: (format: string, formats: readonly string[]) =>
    `"${format}" is no format of a quiz. Take ${formats.join(', ')}.`,
} as const;

/** What the API document says of the trainer's desk. */
export const quizApi = {
  desk: 'The trainer’s desk: the builder, and the set that the address asks for.',
  sheet: 'The student sheet of a set, to be printed.',
  key: 'The answer key of a set, to be printed.',
  tailgate: 'A set in large print, to be read aloud.',
  take: 'A set to be taken.',
  mark: 'Marks answers: all at once, or one after another.',
  signOff: 'The practical sheet of a seat, to be ticked on the job.',
  practice: 'Practice of one person, kept on the phone.',
  kept: 'The key of a set that was saved, with what the rules say otherwise since.',
  file: 'A set as a file.',
  fileGiven: 'The file.',
  classNew: 'Asks whether a set is to be given to a class.',
  classStart: 'Keeps a set for a class and leads to the page of its trainer.',
  classSeen: 'A class: its results for the trainer, the set for the crew.',
  classAnswer: 'The answers of one of the crew, with initials or a number.',
  classFile: 'The results of a class as a file.',
  classErase: 'Erases a class.',
  noClass: 'There is no class under this key.',
  noStore: 'The store cannot be had.',
  page: 'A page.',
  none: 'No such set can be had; the page says what can.',
} as const;
