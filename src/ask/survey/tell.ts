import { roundUp } from '../../calc/quantity.ts';
import { restsOn } from '../../calc/solve.ts';
import { below, volumeByTrapezoids } from '../../calc/survey/profile.ts';
import type { Unit } from '../../calc/units.ts';
import { sayFigure } from '../../calc/wording.ts';
import { blank } from '../refusal.ts';
import type { Reply, Value, Working } from '../reply.ts';
import { asValue, saySource } from '../say.ts';
import type { Scene } from '../scene.ts';
import { surveyWords as words } from '../wording/survey.ts';
import { figureOf } from '../working.ts';
import type { InForce } from './in-force.ts';
import type { Survey, SurveyLow, SurveyStation, SurveyVolume } from './shape.ts';
import { averageOf, inUnitOf, type Solid, simpsonOf } from './solid.ts';

/** Asks for a row that could not be read, or for what is lacking to place the readings. Undefined where nothing is. */
export function askAboutSurvey(scene: Scene, { heard, lack }: InForce): Reply | undefined {
  const { survey, faults } = heard;
  const ask = (quantity: string, text: string, choices: readonly string[], asked?: string): Reply => ({
    ...blank,
    kind: 'clarify',
    topic: 'survey',
    reason: asked ? 'missing-fact' : 'ambiguous',
    text,
    clarify: { quantity, text, choices: choices.map((send) => ({ text: send, send })) },
    rules: { version: scene.engine.knowledge.version },
    job: asked ? { ...scene.job, asked } : scene.job,
  });
  if (heard.fresh && (faults.length > 0 || survey.unread)) {
    const lines = faults.length > 0 ? faults.map(words.fault) : survey.unread!.map(words.unread);
    const again = survey.unread !== undefined && survey.rows.length > 0;
    return ask(
      'depth-reading',
      [words.rowsRead(survey.rows.length), ...lines, again ? words.sendRow : words.sendAll].join('\n'),
      again ? [words.leaveOut] : [],
    );
  }
  const record = lack && scene.engine.knowledge.quantities.get(lack);
  if (!record?.question || !heard.fresh) return undefined;
  const count = survey.rows.flatMap(({ readings }) => readings).length;
  const choices =
    survey.units.along === 'm' ? [] : record.question.choices.map(({ number, unit }) => `${number} ${unit}`);
  return ask(lack!, `${words.read(count)} ${record.question.text}`, choices, lack);
}

/** A reply with what the readings say: volumes by two rules, the deepest spot, lifts at each station, what is filled first. */
export function tellSurvey(scene: Scene, inForce: InForce, reply: Reply): Reply {
  const { solid, heard, about } = inForce;
  const { solved } = scene.voice;
  if (!solid || (reply.kind !== 'value' && reply.kind !== 'verdict')) return reply;
  const rests = restsOn(
    solved,
    reply.values.map(({ quantity }) => quantity),
  );
  if (!about && !rests.has('patch-depth') && !rests.has('deepest-depth')) return reply;
  const told = surveyOf(scene, inForce, solid);
  if (!about) return { ...reply, survey: told };
  const lines = linesOf(scene, inForce, solid, told);
  return {
    ...reply,
    survey: told,
    values: [...reply.values, ...besideOf(scene, reply.values)],
    working: [...workingOf(scene, solid, told, heard.survey.units.depth), ...reply.working],
    text: [reply.text, ...lines].join('\n'),
    cautions: [
      ...new Set([
        ...(scene.engine.knowledge.quantities.get('deepest-depth')?.caution
          ? [scene.engine.knowledge.quantities.get('deepest-depth')!.caution!]
          : []),
        ...reply.cautions,
      ]),
    ],
  };
}

function besideOf({ voice }: Scene, values: readonly Value[]): Value[] {
  const had = new Set(values.map(({ quantity }) => quantity));
  return ['patch-volume', 'patch-volume-simpson', 'deepest-depth', 'lift-count']
    .filter((id) => !had.has(id))
    .flatMap((id) => figureOf(id, voice) ?? []);
}

function surveyOf({ voice, engine }: Scene, { heard }: InForce, solid: Solid): Survey {
  const { units, rows, straightedge } = heard.survey;
  const { quantities } = engine.knowledge;
  const most = voice.solved.get('lift-max')!.value;
  const liftsFor = (depth: number): number => (depth > 0 ? Math.max(1, roundUp(depth / most)) : 0);
  const stations = solid.sections.map((section, i): SurveyStation => {
    const deepest = Math.max(...section.depths);
    const from = heard.places[i];
    return {
      label: rows[i]!.label ?? sayFigure(section.at, units.along),
      at: inUnitOf(section.at, units.along),
      offsets: section.offsets.map((each) => inUnitOf(each, units.along)),
      readings: rows[i]!.readings,
      average: inUnitOf(averageOf(section), units.depth),
      deepest: inUnitOf(deepest, units.depth),
      lifts: liftsFor(deepest),
      ...(from ? { from } : {}),
    };
  });
  const record = quantities.get('patch-volume')!;
  const volume = (method: SurveyVolume['method'], base: number | undefined): SurveyVolume[] => {
    if (base === undefined) return [];
    const { number, unit, text } = asValue(record, { value: base, low: base, high: base }, voice.unit('patch-volume'));
    return [{ method, number, unit, text }];
  };
  const length = voice.solved.get('patch-length')?.value;
  const whole =
    solid.sections.length > 1 ? volumeByTrapezoids(solid.sections) : length && length * solid.average * solid.width;
  const overAll = Math.max(1, Math.min(...stations.map(({ lifts }) => lifts)));
  const [at, reading] = solid.deepestAt;
  return {
    units: { along: units.along, across: units.along, depth: units.depth },
    width: inUnitOf(solid.width, units.along),
    stations,
    ...(straightedge === undefined ? {} : { straightedge: { number: straightedge, unit: units.along } }),
    volumes: [...volume('trapezoid', whole || undefined), ...volume('simpson', simpsonOf(solid, length))],
    deepest: {
      label: stations[at]!.label,
      at: stations[at]!.at,
      offset: stations[at]!.offsets[reading]!,
      depth: stations[at]!.deepest,
    },
    lift: { most: inUnitOf(most, units.depth), overAll },
    fill: stations
      .filter(({ lifts }) => lifts > overAll)
      .sort((a, b) => b.deepest - a.deepest || a.at - b.at)
      .map(({ label, at, deepest, lifts }): SurveyLow => ({ label, at, deepest, lifts })),
  };
}

function linesOf(scene: Scene, { heard }: InForce, solid: Solid, told: Survey): string[] {
  const { survey, left, counted, added } = heard;
  const { depth, along } = told.units;
  const say = (number: number, unit: Unit): string =>
    sayFigure(number * (unit === depth ? (depth === 'in' ? 1 : 1 / 25.4) : along === 'ft' ? 12 : 1 / 0.0254), unit, {
      given: true,
    });
  const count = survey.rows.flatMap(({ readings }) => readings).length;
  const perRow = survey.rows[0]!.readings.length;
  const many = told.stations.length > 1;
  const [first, last] = [told.stations[0]!, told.stations.at(-1)!];
  const { deepest } = told;
  const where = perRow > 1 ? words.fromLeft(say(deepest.offset, along)) : undefined;
  const lifts = told.stations.find(({ at }) => at === deepest.at)!.lifts;
  const lows = told.fill.map(({ label, deepest: each }) => words.low(label, say(each, depth)));
  const most = scene.voice.solved.get('lift-max')!.value * told.lift.overAll;
  const parts = tonsOf(scene, solid, told);
  const edge = scene.engine.knowledge.quantities.get('straightedge-length');
  return [
    added ? words.added(added) : '',
    many
      ? words.stations(count, told.stations.length, first.label, last.label, sayFigure(solid.average, depth))
      : words.section(count, sayFigure(solid.average, depth)),
    told.straightedge ? words.under(say(told.straightedge.number, along)) : (edge?.note ?? ''),
    words.volumes(
      told.volumes.map(({ text }) => text),
      differenceOf(told),
    ),
    words.deepest(say(deepest.depth, depth), many ? deepest.label : undefined, where, lifts),
    many ? words.lifts(runsOf(told.stations)) : '',
    lows.length > 0
      ? words.fillFirst(lows, sayFigure(most, depth), parts && { lows: parts.lows, rest: parts.rest })
      : many
        ? words.noLows(told.lift.overAll)
        : '',
    perRow === 1 && many ? words.wholeWidth : perRow > 1 && !survey.offsets ? words.evenly : '',
    survey.rows.some(({ at }) => at === undefined) && many
      ? words.steps(sayFigure(solid.sections[1]!.at - solid.sections[0]!.at, along, { rounding: 'tenth' }))
      : '',
    solid.high > 0 ? words.high(solid.high) : '',
    counted !== undefined && counted !== count && counted !== told.stations.length ? words.counted(counted, count) : '',
    left.length > 0 ? words.leftOut(left) : '',
  ].filter(Boolean);
}

/** How far Simpson's rule is from the trapezoids, in per cent. */
function differenceOf({ volumes: [one, other] }: Survey): number | undefined {
  return one && other ? (other.number / one.number - 1) * 100 : undefined;
}

/** Tons in the lows, below what the lifts over all take, and in those. */
function tonsOf({ voice, engine }: Scene, solid: Solid, { lift }: Survey): { lows: string; rest: string } | undefined {
  const [mass, volume] = ['premix-mass', 'patch-volume'].map((id) => voice.solved.get(id)?.value);
  if (!mass || !volume || solid.sections.length < 2) return undefined;
  const level = (voice.solved.get('lift-max')!.value ?? 0) * lift.overAll;
  const lows = volumeByTrapezoids(below(solid.sections, level)) * (mass / volume);
  const record = engine.knowledge.quantities.get('premix-mass')!;
  const say = (base: number): string =>
    asValue(record, { value: base, low: base, high: base }, voice.unit('premix-mass')).text;
  return { lows: say(lows), rest: say(mass - lows) };
}

/** Stations of one number of lifts side by side are told together. */
function runsOf(stations: readonly SurveyStation[]): { from: string; to: string; lifts: number }[] {
  const runs: { from: string; to: string; lifts: number }[] = [];
  for (const { label, lifts } of stations) {
    const last = runs.at(-1);
    if (last?.lifts === lifts) last.to = label;
    else runs.push({ from: label, to: label, lifts });
  }
  return runs;
}

function workingOf({ engine, voice }: Scene, solid: Solid, told: Survey, depth: 'in' | 'mm'): Working[] {
  const { quantities } = engine.knowledge;
  const step = (id: string, formula: string, figures: string, result: string): Working[] => {
    const record = quantities.get(id);
    return record
      ? [
          {
            quantity: id,
            formula: `${record.title} = ${formula}`,
            with: figures,
            result,
            rule: `quantity/${id}`,
            source: saySource(record.sources[0]),
          },
        ]
      : [];
  };
  const [trapezoid, simpson] = told.volumes;
  const averages = told.stations
    .map(({ average }) => sayFigure(average * (depth === 'in' ? 1 : 1 / 25.4), depth, { given: true, plain: true }))
    .join(', ');
  return [
    ...(trapezoid ? step('patch-volume', words.trapezoidRule, averages, trapezoid.text) : []),
    ...(simpson ? step('patch-volume-simpson', words.simpsonRule, averages, simpson.text) : []),
    ...step(
      'patch-depth',
      words.averageRule,
      sayFigure(solid.width, voice.unit('patch-width')),
      sayFigure(solid.average, depth),
    ),
  ];
}
