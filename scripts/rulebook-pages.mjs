/** One page of the rule book: every record of a folder, in the order of the index. */
export function pageOf(folder, { records }, write) {
  const entries = records[folder].map((record) => entryOf(record, write));
  return `# ${folder[0].toUpperCase()}${folder.slice(1)}\n\n${entries.join('\n\n')}\n`;
}

function entryOf(record, write) {
  const { id, title, kind, because, sources, question } = record;
  const lines = [
    ...said(record, write, ['seen', 'text']),
    ...kindLines[kind](record, write),
    ...said(record, write, Object.keys(sentences).slice(2)),
    ...sentenceLists.map(([field, label]) => [label, (record[field] ?? []).map(write.text)]),
    question && line('Asked', write.text(question.text)),
    line('Why', write.text(because)),
    ['Sources', sources.map(write.source)],
  ];
  return `## ${id}\n\n**${write.text(title)}**\n\n${bullets(lines)}`;
}

/** Fields that are one sentence, or a list of them, whatever the kind. */
const sentences = {
  seen: 'Seen',
  text: 'What is done',
  good: 'Good',
  now: 'Now',
  nextTime: 'Next time',
  breaks: 'Broken, it is a',
  fix: 'What to do',
  beyond: 'Past the end',
  recorded: 'Severity',
  default: 'Taken when nobody says otherwise',
  asks: 'A question for it',
  note: 'Note',
  caution: 'Caution',
};
const said = (record, { text }, fields) =>
  fields.map((field) => typeof record[field] === 'string' && line(sentences[field], text(record[field])));
const sentenceLists = Object.entries({ how: 'How', checks: 'Check', cautions: 'Watch', rules: 'Rules' });

/** A line, or a heading with lines of its own; what is not there is left out. */
function bullets(lines, indent = '') {
  return lines
    .filter((line) => line && (typeof line === 'string' || line[1]?.length))
    .map((line) =>
      typeof line === 'string' ? `${indent}- ${line}` : `${indent}- ${line[0]}:\n${bullets(line[1], `${indent}  `)}`,
    )
    .join('\n');
}

/** The words for what records are made of, from the program's own wording. */
export function pen({ sayFigure, toBase, inWords, saySource, knowledge }) {
  const text = (words) => words.replace(/[\\`*_<>|]/g, '\\$&');
  const figure = ({ number, unit }) => sayFigure(toBase(number, unit), unit, { given: true });
  const titleOf = (id) => knowledge.quantities.get(id)?.title ?? id;
  return {
    text,
    figure,
    source: (source) => text(saySource(source)) + (source.seen === 'read' ? ' (read)' : ''),
    formula: ({ finds, by }) =>
      text(`${finds.title} = ${inWords(by, (leaf) => (leaf.op === 'fact' ? titleOf(leaf.id) : figure(leaf)))}`),
    bound: (bound) => ('kind' in bound ? to('quantities', bound.id) : figure(bound)),
    when: (conditions) =>
      conditions?.length
        ? conditions.map(({ choice, is }) => `${to('choices', choice.id)} is ${is.join(' or ')}`).join(', and ')
        : '',
    facts: (facts) =>
      Object.entries(facts)
        .map(([id, fact]) => `${id} ${typeof fact === 'string' ? fact : figure({ number: fact[0], unit: fact[1] })}`)
        .join(', ') || 'nothing',
  };
}

const to = (folder, id) => `[${id}](${folder}.md#${id})`;
const links = (folder, some = []) => some.map(({ id }) => to(folder, id)).join(', ');
const line = (label, words) => (words ? `${label}: ${words}` : '');

/** What each kind of record has beside these. */
const kindLines = {
  quantity: ({ units, dimension, default: taken, defaultWhen = [], plausible }, { figure, when }) => [
    `Measured in ${[...new Set([units.us, units.metric])].map((unit) => `\`${unit}\``).join(' or ')} (${dimension})`,
    taken && line('Taken when nobody says otherwise', figure(taken) + rangeOf(taken, figure)),
    ...defaultWhen.map((other) =>
      other.figure
        ? `Taken while ${when(other.when)}: ${figure(other.figure)}`
        : `Nothing is taken while ${when(other.when)}: it is asked for`,
    ),
    plausible && `Asked back outside ${figure(plausible.min)} to ${figure(plausible.max)}`,
  ],
  choice: ({ options }, { text }) => [['One of', options.map(({ id, title }) => `\`${id}\`: ${text(title)}`)]],
  relation: (record, { formula, when, facts, text }) => [
    formula(record),
    line('Holds while', when(record.when)),
    record.plan && 'A plan, not an identity: another figure is no contradiction',
    record.bothWays === false && 'Not turned round',
    line('Only where said', links('quantities', record.said)),
    [
      'Examples',
      record.examples.map(
        ({ given, finds, source }) => `${facts(given)}: ${facts({ [record.finds.id]: finds })} (${text(source)})`,
      ),
    ],
  ],
  limit: (record, write) => [
    line('Judges', to('quantities', record.on.id)),
    ...boundLines(record, write),
    line('Applies while', write.when(record.when)),
    record.from && `From ${to('quantities', record.from.quantity.id)} ${write.figure(record.from.atLeast)} up`,
    ...(record.cases ?? []).map((each) => [`While ${write.when(each.when)}`, boundLines(each, write).filter(Boolean)]),
    record.stopFrom && `A stop from ${write.figure(record.stopFrom)}`,
    record.stopOver && `A stop above ${write.figure(record.stopOver)}`,
    record.strict && 'The bound itself breaks it',
    ['Examples', limitExamples(record.examples, write)],
  ],
  practice: ({ on, judged, cases = [], examples = [], when }, write) => [
    line('Judges', to('choices', on.id)),
    line('Applies while', write.when(when)),
    ['Says', judgedLines(judged, write)],
    ...cases.map((each) => [`While ${write.when(each.when)}`, judgedLines(each.judged, write)]),
    ['Examples', examples.map(({ facts, is }) => `${write.facts(facts)}: ${is}`)],
  ],
  table: ({ rows, key, value }, { figure }) => [
    'Between two rows the next one up is taken',
    ['Rows', rows.map(([at, is]) => `${figure({ ...key, number: at })}: ${figure({ ...value, number: is })}`)],
  ],
  'choice-table': ({ by, columns, rows }, { figure }) => [
    `Read by ${to('choices', by.id)}; finds ${links(
      'quantities',
      columns.map(({ finds }) => finds),
    )}`,
    [
      'Rows',
      Object.entries(rows).map(([option, row]) => `\`${option}\`: ${row.map(wordsIn(columns, figure)).join(', ')}`),
    ],
  ],
  step: ({ also = [], craft = [], before = [] }, { text }) => [
    ...also.map((each) => line('On occasion', text(each.text))),
    ...craft.map((each) => line(each.title, text(each.text))),
    ['Before it', before.map((need) => `${text(need.text)} If not: ${text(need.unmet)}`)],
  ],
  fault: ({ causes, apart, examples }, { text, source }) => [
    [
      'Causes, the likeliest first',
      causes.map((cause) => `${text(cause.text)}: ${text(cause.remedy)} [${source(cause.source)}]`),
    ],
    apart && line('Told apart by', to('choices', apart.by.id)),
    ['Found by', examples.finds.map(text)],
    ['Not by', examples.not.map(text)],
  ],
  repair: () => [],
  defect: ({ decisions, severity = [] }, write) => [
    ['The first that holds', decisions.map((decision) => decisionLine(decision, write))],
    ['Severity', severity.map(({ scheme, source }) => `${write.text(scheme)}: ${write.source(source)}`)],
  ],
};

const wordsIn = (columns, figure) => (number, i) => figure({ number, unit: columns[i].unit });

const rangeOf = ({ number, unit, low = number, high = number }, figure) =>
  low === high ? '' : ` (${figure({ number: low, unit })} to ${figure({ number: high, unit })})`;

const boundLines = ({ max, min }, { bound }) => [min && `At least ${bound(min)}`, max && `At most ${bound(max)}`];

const judgedLines = (judged, { text }) =>
  Object.entries(judged).map(([option, { status, text: said }]) => `${option}: ${status}. ${text(said)}`);

const limitExamples = ({ holds, boundary, breaks, cannotTell, also = [] }, { facts }) => [
  ...Object.entries({ holds, 'on the bound': boundary, breaks, 'cannot tell': cannotTell }).map(
    ([is, each]) => `${is}: ${facts(each)}`,
  ),
  ...also.map((each) => `${each.is}: ${facts(each.facts)}`),
];

function decisionLine({ when, ifSaid = [], repair, because, source, holding, engineer }, write) {
  const found = [...when, ...ifSaid].map((finding) => findingWords(finding, write)).join(', and ');
  const more = [holding && 'a holding repair', engineer && 'call the engineer'].filter(Boolean).join(', ');
  return `${found || 'else'}: ${to('repairs', repair)}${more ? ` (${more})` : ''}: ${write.text(because)} [${write.source(source)}]`;
}

function findingWords(finding, { when, figure }) {
  if ('choice' in finding) return when([finding]);
  const ends = { from: 'from', over: 'over', upTo: 'up to', under: 'under' };
  const words = Object.keys(ends).flatMap((end) => (finding[end] ? `${ends[end]} ${figure(finding[end])}` : []));
  return `${finding.of.map(({ id }) => to('quantities', id)).join(' or ')} ${words.join(' ')}`;
}
