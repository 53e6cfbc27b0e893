import { restsOn } from '../calc/solve.ts';
import { type Choice as Chosen, decide, settled } from '../rules/decide.ts';
import { severityOf } from '../rules/severity.ts';
import type { Decision, DefectRecord, RepairRecord } from '../rules/shapes-work.ts';
import { type Work, work } from '../rules/work.ts';
import { askFigure } from './clarify.ts';
import { clarifying } from './clarifying.ts';
import { cueIndex, heardIn } from './cue-index.ts';
import { givenOf, keptOf } from './facts.ts';
import { ignoredIn } from './ignored.ts';
import { checksOn } from './judging.ts';
import { laid } from './laid.ts';
import { blank } from './refusal.ts';
import type { Clarify, Reply } from './reply.ts';
import { capital, saySource } from './say.ts';
import type { Scene } from './scene.ts';
import type { Sentence } from './sentence.ts';
import { tradeCue } from './trade-cue.ts';
import { en } from './wording/en.ts';
import { assumedBy } from './working.ts';

/** What asks for a repair: a defect, or the question which repair. */
export interface RepairAsk {
  readonly kind: 'defect' | 'repair';
  /** Id of the defect; of the repair asked about, or `which`. */
  readonly id: string;
}

/**
 * Answers which repair suits a defect, with the reason, how severe it is by the published classes, and whether the engineer
 * is called; or asks the one thing that decides. A repair asked about by itself, with no defect known, is explained.
 */
export function repairReply(scene: Scene, ask: RepairAsk): Reply {
  const { solved, knowledge } = scene.voice;
  const asked = ask.kind === 'repair' ? work.repairs.get(ask.id) : undefined;
  if (asked) return explained(scene, asked);
  const about = knowledge.choices.get('defect');
  const id = ask.kind === 'defect' ? ask.id : about && settled(about, solved);
  const defect = work.defects.get(id ?? '');
  if (!defect) return askDefect(scene, work);
  const chosen = decide(defect, solved);
  if ('missing' in chosen) return asking(scene, defect, chosen);
  return decided(scene, defect, chosen);
}

function decided(scene: Scene, defect: DefectRecord, chosen: Extract<Chosen, { decision: unknown }>): Reply {
  const { voice, understood } = scene;
  const taken = chosen.decision;
  const repair = work.repairs.get(taken?.repair ?? 'engineer')!;
  const asked = repairAskedIn(understood.sentence);
  const rests = 'rests' in chosen ? chosen.rests : [];
  const holding = taken?.holding ?? false;
  const with_ = (taken?.with ?? []).flatMap((id) => work.repairs.get(id)?.title ?? []);
  const text = [
    asked ? en.repair.isAsked(asked.title, asked.id === repair.id, holding) : '',
    en.repair.found(capital(repair.title), defect.title, reason(taken, repair)),
    holding ? en.repair.holding : '',
    with_.length ? en.repair.first(with_) : '',
    severity(scene, defect),
    taken?.engineer ? en.repair.engineer : '',
    en.repair.how(repair.how),
    en.steps.watch(repair.caution),
    en.repair.notDesign,
  ];
  const body = common(scene, repair, rests);
  return {
    ...body,
    text: text.filter(Boolean).join('\n'),
    assumed: assumedBy([...rests, ...('assumed' in chosen ? chosen.assumed : [])], voice),
    kept: keptOf(understood.facts, new Set([...restsOn(voice.solved, rests), ...rests])),
  };
}

/** Why, with where it comes from. */
const reason = (taken: Decision | undefined, { because, sources }: RepairRecord): string =>
  taken ? `${taken.because} (${saySource(taken.source)})` : `${because} (${saySource(sources[0])})`;

function severity({ voice }: Scene, defect: DefectRecord): string {
  const found = severityOf(defect, voice.solved).filter(({ level }) => level !== 'unrated');
  const lines = found.map(({ level, scheme, source }) => en.repair.severity(level, scheme, saySource(source)));
  return [lines.length ? en.repair.severities(lines) : '', defect.recorded ?? ''].filter(Boolean).join(' ');
}

function explained(scene: Scene, repair: RepairRecord): Reply {
  const text = [
    en.steps.one(capital(repair.title), repair.because),
    en.repair.how(repair.how),
    en.steps.watch(repair.caution),
    en.sources(repair.sources.map(saySource)),
  ];
  return { ...common(scene, repair, []), text: text.join('\n') };
}

function common(scene: Scene, repair: RepairRecord, rests: readonly string[]): Reply {
  const { voice, understood, engine } = scene;
  return {
    ...blank,
    kind: 'repair',
    topic: repair.id,
    text: '',
    checks: checksOn(new Set(rests), voice),
    given: givenOf(understood.fresh),
    ignored: ignoredIn(scene),
    cautions: [repair.caution, en.repair.notDesign, en.agencyFirst],
    next: repair.id === 'blade-patch' ? [en.repair.checklist] : [],
    rules: { version: engine.knowledge.version },
    job: scene.job,
  };
}

/** Asks the one thing that decides. */
function asking(scene: Scene, defect: DefectRecord, { missing }: Extract<Chosen, { missing: unknown }>): Reply {
  if (missing.kind === 'quantity')
    return clarifying(scene, defect.id, 'missing-fact', askFigure(scene, missing.id)!, missing.id);
  const choices = missing.options.map(({ title }) => ({ text: capital(title), send: title }));
  const clarify: Clarify = { quantity: missing.id, text: missing.question!.text, choices };
  return clarifying(scene, defect.id, 'missing-fact', clarify, missing.id);
}

/** Asks what is wrong with the road. */
function askDefect(scene: Scene, { defects }: Work): Reply {
  const about = scene.voice.knowledge.choices.get('defect')!;
  const choices = [...defects.values()].map(({ title }) => ({ text: capital(title), send: title }));
  return clarifying(
    scene,
    'which',
    'missing-fact',
    { quantity: about.id, text: about.question!.text, choices },
    about.id,
  );
}

/** The cues by which repairs are named. */
export const repairIndex = cueIndex(
  () => [...work.repairs.values()].flatMap((repair) => repair.named.map((text) => ({ text, of: repair }))),
  tradeCue,
  laid?.repairs,
);

/** The repair a question names, as in "blade patch it?"; undefined when it names none, or leaves the choice open with "or". */
function repairAskedIn(sentence: Sentence): RepairRecord | undefined {
  const [heard, ...others] = new Set(heardIn(repairIndex, sentence).map(({ of }) => of));
  return others.length === 0 && !sentence.places.has('or') ? heard : undefined;
}
