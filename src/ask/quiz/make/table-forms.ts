import { toBase } from '../../../calc/quantity.ts';
import type { ChoiceTable, Facts, FigureTable, QuantityRecord } from '../../../rules/shapes.ts';
import { capital, say, saySource } from '../../say.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { sayFact, voiceOf } from '../facts.ts';
import type { Random } from '../random.ts';
import type { Desk, Draft, Point } from '../shapes.ts';
import { chosen, type Figured, risingOptions } from './options.ts';

/** Published tables as points: read the right row and the right column. */
export function tablePoints(desk: Desk): Point[] {
  return [...desk.knowledge.tables.values()].flatMap((table): Point[] => {
    if (table.kind === 'choice-table') return [choicePoint(desk, table)];
    return table.id === 'stopping-sight' ? [sightPoint(desk, table)] : [];
  });
}

const point = (id: string, make: (random: Random, place: number) => Draft | undefined): Point => ({
  id,
  group: id,
  topics: ['traffic'],
  mustPass: false,
  forms: [{ id: 'read', kind: 'one', level: 'easy', make: (random, { place }) => make(random, place) }],
});

function choicePoint(desk: Desk, table: ChoiceTable): Point {
  return point(`table/${table.id}`, (random, place) => {
    const road = random.pick(Object.keys(table.rows));
    const column = random.int(table.columns.length);
    const { finds, unit } = table.columns[column]!;
    const facts: Facts = { [table.by.id]: road };
    const others = Object.keys(table.rows).filter((each) => each !== road);
    const figures = new Map([
      ...others.map((each) => [`other-road ${each}`, toBase(table.rows[each]![column]!, unit)] as const),
      ...table.columns.map((_, at) => [`other-sign ${at}`, toBase(table.rows[road]![at]!, unit)] as const),
    ]);
    const stem = quiz.distance(sayFact(desk.knowledge, facts, table.by.id)!, finds.title, table.by.title);
    return readOff(desk, { table, finds, facts, figures, stem }, random, place);
  });
}

function sightPoint(desk: Desk, table: FigureTable): Point {
  return point(`table/${table.id}`, (random, place) => {
    const at = 2 + random.int(table.rows.length - 4);
    const facts: Facts = {
      'posted-speed': [table.rows[at]![0], table.key.unit],
      grade: [0, '%'],
      'speed-unit': 'us',
    };
    const row = (by: number): number => toBase(table.rows[at + by]![1], table.value.unit);
    const figures = new Map([
      ['second-row-down', row(-2)],
      ['lower-row', row(-1)],
      ['higher-row', row(1)],
      ['second-row-up', row(2)],
    ]);
    const finds = desk.knowledge.quantities.get('buffer-length')!;
    const stem = quiz.sight(sayFact(desk.knowledge, facts, 'posted-speed')!);
    return readOff(desk, { table, finds, facts, figures, stem }, random, place);
  });
}

interface Reading {
  readonly table: ChoiceTable | FigureTable;
  readonly finds: QuantityRecord;
  readonly facts: Facts;
  /** Figures of the wrong rows and columns, by the tag of the mistake and which one it is. */
  readonly figures: ReadonlyMap<string, number>;
  readonly stem: string;
}

/** The key is what the engine works out from the facts; the rows beside it are the mistakes. */
function readOff(
  { knowledge }: Desk,
  { table, finds, facts, figures, stem }: Reading,
  random: Random,
  place: number,
): Draft | undefined {
  const voice = voiceOf(knowledge, facts);
  const found = voice.solved.get(finds.id);
  if (!found) return undefined;
  const text = (base: number): string => say(finds, base, finds.units.us);
  const wrong = [...figures].map(
    ([tag, figure]): Figured => ({ text: text(figure), figure, mistake: tag.split(' ')[0]! }),
  );
  const key = { text: text(found.value), figure: found.value, tolerance: 0 };
  const taken = chosen(random, key, wrong, place);
  if (!taken) return undefined;
  const source = saySource(table.sources[0]);
  const why = `${quiz.fact(finds.title, key.text)} ${capital(table.because)}`;
  return {
    item: {
      kind: 'one',
      stem,
      options: risingOptions(key, taken),
      key: key.text,
      why,
      rule: `table/${table.id}`,
      source,
    },
    order: 'rising',
    rests: table.sources,
    collides: [],
    printed: false,
    unsaid: found.assumed.filter((id) => !(id.split('=')[0]! in facts)),
    numbers: {
      right: found.value,
      tolerance: 0,
      wrong: taken,
      reproduce: (mistake) => [...figures].flatMap(([tag, figure]) => (tag.split(' ')[0] === mistake ? [figure] : [])),
    },
  };
}
