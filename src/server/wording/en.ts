/** Every sentence the server and the command line say of their own; the answers come from the engine. */
export const en = {
  listening: (address: string) => `Bladehand listens on ${address}`,
  questionMissing: 'Type a question, for example: how many tons for 300 x 12 ft at 2 in.',
  questionTooLong: (most: number) =>
    `That is over ${group(most)} characters. Ask one thing at a time, in a line or two; send depth readings a part at a time, each row with its station, and they are put together.`,
  unitsWrong: 'Set units to "us" or "metric", or leave it out.',
  langWrong: 'Set lang to "en" or "es", or leave it out.',
  notAnObject: 'Send a JSON object with a question in it.',
  unknownMember: (name: string) =>
    `Leave out "${name}": a request has question, and if wanted job, units, lang, agency and rates.`,
  title: {
    400: 'The request cannot be read',
    403: 'Your link does not let you do that',
    404: 'There is nothing at this address',
    405: 'This address does not take that method',
    410: 'This link was revoked',
    413: 'The request is too large',
    415: 'The content type is not one that is read here',
    422: 'The request does not fit',
    500: 'A fault of ours',
    503: 'Not kept: the store cannot be had',
  },
  detail: {
    400: 'The body is not well-formed JSON. Check its brackets, quotes and commas, and send it again.',
    form: 'The form broke off on its way. Go back and send it again.',
    404: 'Ask at /, or send questions to /api/ask; /openapi.json describes what can be sent.',
    405: (methods: string) => `Use ${methods} here.`,
    413: (most: number) => `A request may be ${Math.floor(most / 1024)} KiB at most. Ask one thing at a time.`,
    415: (wanted: string) => `Send ${wanted} and name it in Content-Type.`,
    422: 'See errors for what to change, and send it again.',
    500: 'The fault is on our side and nothing you typed is to blame. Ask again; if it happens twice, say it another way.',
  },
  api: {
    about:
      'Answers on blade patching: computed figures, how each came about, the rules that bear on them and their sources.',
    ask: 'Asks one question. The job of the last reply, sent back, is the memory of the conversation.',
    reply: 'The reply; a question that needs one more fact, or is outside the rules, is answered with 200 as well.',
    health: 'Whether the server answers, and with which rules',
    healthy: 'It does',
    page: 'The page people ask on; with q, a page with the answer',
    form: 'A question from the form of the page, and the page with its answer',
    answerPage: 'A page',
    document: 'This document',
    sheet: 'The sheet of the job that the form brings, to be printed',
    noSheet: 'The sheet page, with no job on it',
    kept: {
      '/shell': { id: 'shell', summary: 'An empty page, which the phone fills where there is no signal' },
      '/worker.js': { id: 'worker', summary: 'Keeps the page on the phone, with the hash of every file' },
      '/cards': { id: 'cards', summary: 'The cards; with q, those that speak of it' },
      '/cards/{id}': { id: 'card', summary: 'One card' },
      '/rules': { id: 'rules', summary: 'The records that answers rest on' },
      '/rules/{kind}/{id}': { id: 'rule', summary: 'One record, with its reason and its sources' },
      '/words': { id: 'words', summary: 'The words of the trade' },
      '/manifest.webmanifest': { id: 'manifest', summary: 'Name and icons of the page, to install it' },
    },
  },
  survey: {
    about:
      'Depth readings across and along the patch, where the answer rests on them: enough to draw the profile from. `units` are those of all its figures; `stations` run along the road and readings from left to right; one station alone is a section across.',
    station:
      'One place along the road: how far along (`at`), where across each depth was read (`offsets`, from the left edge), the depths, their mean across the width, the deepest, and the lifts it takes. `from` is the place of the row in the question.',
    low: 'A low that is filled before the lifts that go over all, deepest first.',
  },
  fault: (id: string, fault: string) => `Fault in request ${id}: ${fault}`,
  start: {
    help: [
      'npm start                 listens on http://127.0.0.1:8787',
      'PORT=9000 npm start       another port; PORT=0 takes a free one',
      'HOST=0.0.0.0 npm start    reachable from other machines',
      '',
    ].join('\n'),
    argument: (argument: string) => `npm start takes no "${argument}". Set PORT or HOST in the environment instead.`,
    badPort: (port: string) => `PORT is "${port}". Set it to a whole number from 0 to 65535; 0 takes a free port.`,
    inUse: (port: number) =>
      `Port ${port} is in use. Stop what listens there, or start on a free port: PORT=0 npm start`,
    notAllowed: (port: number) =>
      `Port ${port} may not be opened by this user. Take one from 1024 up: PORT=8787 npm start`,
    noAddress: (host: string) =>
      `HOST is "${host}", which is no address of this machine. Leave it out, or use 127.0.0.1 or 0.0.0.0.`,
    failed: (why: string) => `The server could not start: ${why}`,
  },
  command: {
    help: `Answers on blade patching: tons, lifts, tack, rolling, traffic control, the steps and what goes wrong.

  npm run --silent ask -- "how many tons for 300 x 12 ft at 2 in"
  npm run --silent ask -- --units metric "tack for 90 m x 3.6 m"
  npm run --silent ask -- --workings --source "how many lifts for 3 in"
  npm run --silent ask -- --json "thinnest lift for 1/2 in stone"
  npm run --silent ask -- --jsonl < questions.txt > replies.jsonl

Put the question in quotes: a shell takes ' and " for its own. Feet and inches can be typed as 12ft and 2in.

  --workings          how each figure came about
  --source            the rules that bear on it and where they come from
  --json              the whole reply as JSON
  --jsonl             one request a line from standard input (a bare question, or a JSON object with question and,
                      if wanted, job, units, lang, agency and rates), one reply a line, in order
  --units us|metric   units of the answer where the question names none
  --lang en|es        language of the question and the answer
  --agency FILE       an agency's own rules (JSON), which come before the general ones
  --rates FILE        published rates of machines (JSON), with their year
  -q, --quiet         only the figure, or the first line of the answer
  -h, --help          this text
  --version           the version of the program and of its rules
  -                   reads the question from standard input

Exit status: 0 answered, 1 a fault of ours, 2 a call that cannot be read, 3 one more thing is needed,
4 out of range or figures that clash, 5 nothing on that in the rules.
`,
    noFile: (option: string, path: string) =>
      `--${option} ${path}: there is no such file to read. Check the path, for example docs/examples/fema-rates-2025.json.`,
    fileNotJson: (option: string, path: string, why: string) =>
      `--${option} ${path}: not well-formed JSON (${why}). Mend it there; nothing is answered without it.`,
    fileFault: (option: string, path: string, line: number, place: string, why: string) =>
      `--${option} ${path}, line ${line}${place ? `, at ${place}` : ''}: ${why}. Mend it there.`,
    fileTooLong: (option: string, path: string, most: number) =>
      `--${option} ${path}: over ${Math.floor(most / 1024)} KiB. Keep only the rows that are used.`,
    tryHelp: 'Try: npm run --silent ask -- --help',
    oneWay: 'Take one of --json, --jsonl and --quiet.',
    jsonlAlone: 'With --jsonl the questions come from standard input: leave them out of the command.',
    fault: 'A fault of ours: this question could not be answered. Say it another way.',
    faultDetail: (fault: string) => `Fault: ${fault}`,
    badJson:
      'This line is not well-formed JSON. Send a bare question, or an object such as {"question": "how many tons"}.',
    lineTooLong: (most: number) => `This line is over ${Math.floor(most / 1024)} KiB. Send one request a line.`,
    version: (program: string, rules: string) => `bladehand ${program}, rules ${rules}`,
    short: 'Ask in quotes, for example: npm run --silent ask -- "how many tons for 300 x 12 ft at 2 in"',
    unknownOption: (why: string) =>
      `${why}. A question that starts with a dash goes after two more: ask -- -- "-5 degC ok?"`,
    choice: (text: string) => `  - ${text}`,
    workings: 'Workings',
    working: (formula: string, figures: string, result: string, source: string) =>
      `  ${formula}\n    = ${figures}\n    = ${result}\n    from ${source}`,
    sources: 'Rules and sources',
    source: (rule: string, source: string) => `  ${rule}\n    from ${source}`,
    assumed: (text: string, rule: string) => `  ${text}\n    assumed by ${rule}`,
  },
} as const;

/** Thousands apart. The locale data of the engine take longer to load than all else at a start. */
function group(number: number): string {
  return String(number).replace(/\B(?=(?:\d{3}){1,4}$)/g, ',');
}
