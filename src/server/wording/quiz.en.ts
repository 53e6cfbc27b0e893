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
  badCount: (count: string) => `"${count}" is no number of questions. Give a whole number, for example --count 10.`,
  extra: (word: string) => `"${word}" is not understood. Say what it is, for example --topic ${word}.`,
  needsFile: 'A QTI package is no text to look at. Say where it goes: -o quiz.zip',
  notWritten: (file: string, why: string) => `${file} could not be written: ${why}`,
  written: (file: string, count: number) => `${file}: ${count} questions`,
} as const;
