/** One page of the rule book: every record of a folder, in the order of the index. */
export function pageOf(folder, { records }, write) {
  const entries = records[folder].map((record) => entryOf(record, write));
  return `# ${folder[0].toUpperCase()}${folder.slice(1)}\n\n${entries.join('\n\n')}\n`;
}

function entryOf(record, write) {
  const { id, title, because, sources, kind } = record;
  const lines = [
    ...kindLines[kind](record, write),
    `Why: ${write.text(because)}`,
    ['Sources', sources.map(write.source)],
  ];
  return `## ${id}\n\n**${write.text(title)}**\n\n${bullets(lines)}`;
}

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
const ids = (folder, some = []) => some.map((id) => to(folder, id)).join(', ');
const line = (label, words) => (words ? `${label}: ${words}` : '');
const quoted = (lines) => lines.map((words) => `"${words}"`).join(', ');

/** What each kind of record has beside its title, its reason and its sources. */
const kindLines = {
  quantity: (record, { text, figure, when }) => [
    `Measured in ${[...new Set([record.units.us, record.units.metric])].join(' or ')} (${record.dimension})`,
    record.default &&
      line('Taken when nobody says otherwise', figure(record.default) + rangeOf(record.default, figure)),
    ...(record.defaultWhen ?? []).map((other) => `Taken while ${when(other.when)}: ${figure(other.figure)}`),
    record.plausible && `Asked back outside ${figure(record.plausible.min)} to ${figure(record.plausible.max)}`,
    record.question && line('Asked', text(record.question.text)),
    record.asks && line('A question for it', text(record.asks)),
    record.note && line('Note', text(record.note)),
    record.caution && line('Caution', text(record.caution)),
  ],
  choice: (record, { text }) => [
    ['One of', record.options.map(({ id, title }) => `${id}: ${text(title)}`)],
    line('Taken when nobody says otherwise', record.default),
    record.question && line('Asked', text(record.question.text)),
  ],
  relation: (record, write) => [
    write.formula(record),
    line('Holds while', write.when(record.when)),
    record.plan && 'A plan, not an identity: another figure is no contradiction',
    record.bothWays === false && 'Not turned round',
    record.said &&
      line(
        'Only where said',
        ids(
          'quantities',
          record.said.map(({ id }) => id),
        ),
      ),
    record.note && line('Note', write.text(record.note)),
    [
      'Examples',
      record.examples.map(
        ({ given, finds, source }) =>
          `${write.facts(given)}: ${write.facts({ [record.finds.id]: finds })} (${write.text(source)})`,
      ),
    ],
  ],
  limit: (record, write) => [
    line('Judges', to('quantities', record.on.id)),
    ...boundLines(record, write),
    line('Applies while', write.when(record.when)),
    record.from && `From ${to('quantities', record.from.quantity.id)} ${write.figure(record.from.atLeast)} up`,
    ...(record.cases ?? []).map((each) => [`While ${write.when(each.when)}`, boundLines(each, write).filter(Boolean)]),
    line('Broken, it is a', record.breaks),
    record.stopFrom && `A stop from ${write.figure(record.stopFrom)}`,
    record.stopOver && `A stop above ${write.figure(record.stopOver)}`,
    record.strict && 'The bound itself breaks it',
    line('What to do', write.text(record.fix)),
    ['Examples', limitExamples(record.examples, write)],
  ],
  practice: (record, write) => [
    line('Judges', to('choices', record.on.id)),
    line('Applies while', write.when(record.when)),
    ['Says', judgedLines(record.judged, write)],
    ...(record.cases ?? []).map((each) => [`While ${write.when(each.when)}`, judgedLines(each.judged, write)]),
    line('What to do', write.text(record.fix)),
    ['Examples', (record.examples ?? []).map(({ facts, is }) => `${write.facts(facts)}: ${is}`)],
  ],
  table: (record, { figure, text }) => [
    'Between two rows the next one up is taken',
    line('Past the end', record.beyond && text(record.beyond)),
    [
      'Rows',
      record.rows.map(
        ([key, value]) =>
          `${figure({ number: key, unit: record.key.unit })}: ${figure({ number: value, unit: record.value.unit })}`,
      ),
    ],
  ],
  'choice-table': (record, { figure }) => [
    `Read by ${to('choices', record.by.id)}; finds ${ids(
      'quantities',
      record.columns.map(({ finds }) => finds.id),
    )}`,
    [
      'Rows',
      Object.entries(record.rows).map(
        ([option, row]) =>
          `${option}: ${row.map((number, i) => figure({ number, unit: record.columns[i].unit })).join(', ')}`,
      ),
    ],
  ],
  step: (record, { text }) => [
    text(record.text),
    ...(record.craft ?? []).map(({ title, text: craft }) => line(title, text(craft))),
    ['Before it', (record.before ?? []).map((need) => `${text(need.text)} If not: ${text(need.unmet)}`)],
    ['Check', record.checks.map(text)],
    ['Watch', record.cautions.map(text)],
    line('Good', text(record.good)),
    line('Rules', record.rules.join(', ')),
    line('Figures', ids('quantities', record.figures)),
  ],
  fault: (record, { text, source }) => [
    line('Seen', text(record.seen)),
    [
      'Causes, the likeliest first',
      record.causes.map(
        (cause) =>
          `${text(cause.text)}: ${text(cause.remedy)}${cause.rule ? ` Rule: ${cause.rule}.` : ''} Source: ${source(cause.source)}`,
      ),
    ],
    line('Now', text(record.now)),
    line('Next time', text(record.nextTime)),
    record.apart && line('Told apart by', to('choices', record.apart.by.id)),
    record.caution && line('Caution', text(record.caution)),
    line('Found by', text(quoted(record.examples.finds))),
    line('Not by', text(quoted(record.examples.not))),
  ],
  repair: (record, { text }) => [
    ['How', record.how.map(text)],
    line('Rules', record.rules.join(', ')),
    line('Caution', text(record.caution)),
  ],
  defect: (record, write) => [
    line('Seen', write.text(record.seen)),
    ['The first that holds', record.decisions.map((decision) => decisionLine(decision, write))],
    ['Severity', (record.severity ?? []).map(({ scheme, source }) => `${write.text(scheme)}: ${write.source(source)}`)],
    record.recorded && line('Severity', write.text(record.recorded)),
  ],
};

const rangeOf = ({ low, high, number, unit }, figure) =>
  low === undefined && high === undefined
    ? ''
    : ` (${figure({ number: low ?? number, unit })} to ${figure({ number: high ?? number, unit })})`;

const boundLines = ({ max, min }, { bound }) => [min && `At least ${bound(min)}`, max && `At most ${bound(max)}`];

const judgedLines = (judged, { text }) =>
  Object.entries(judged).map(([option, { status, text: said }]) => `${option}: ${status}. ${text(said)}`);

const limitExamples = ({ holds, boundary, breaks, cannotTell, also = [] }, { facts }) => [
  `holds: ${facts(holds)}`,
  `on the bound: ${facts(boundary)}`,
  `breaks: ${facts(breaks)}`,
  `cannot tell: ${facts(cannotTell)}`,
  ...also.map((each) => `${each.is}: ${facts(each.facts)}`),
];

function decisionLine({ when, ifSaid = [], repair, because, source, holding, engineer }, write) {
  const found = [...when, ...ifSaid].map((finding) => findingWords(finding, write)).join(', and ');
  const more = [holding && 'a holding repair', engineer && 'call the engineer'].filter(Boolean).join(', ');
  return `${found || 'else'}: ${to('repairs', repair)}${more ? ` (${more})` : ''}: ${write.text(because)}. ${write.source(source)}`;
}

function findingWords(finding, { when, figure }) {
  if ('choice' in finding) return when([finding]);
  const ends = { from: 'from', over: 'over', upTo: 'up to', under: 'under' };
  const words = Object.keys(ends).flatMap((end) => (finding[end] ? `${ends[end]} ${figure(finding[end])}` : []));
  return `${finding.of.map(({ id }) => to('quantities', id)).join(' or ')} ${words.join(' ')}`;
}
