import { restsOn } from '../calc/solve.ts';
import type { Entry } from '../rules/procedure.ts';
import { work } from '../rules/work.ts';
import { givenOf, keptOf } from './facts.ts';
import { ignoredIn } from './ignored.ts';
import { checksOn } from './judging.ts';
import { blank } from './refusal.ts';
import type { Check, GivenFact, Reply, Span } from './reply.ts';
import { rulesNamed } from './rules-named.ts';
import type { Scene } from './scene.ts';
import type { LiftSaid, Said } from './step-stage.ts';
import { figuresShown, filler, type Viewed, viewStep } from './step-view.ts';
import { en } from './wording/en.ts';
import { assumedBy } from './working.ts';

/** What a question about the steps was read as. */
export interface Asked {
  readonly scene: Scene;
  /** Number of lifts, while it is known. */
  readonly lifts: number | undefined;
  readonly said: Said | undefined;
  readonly lift: LiftSaid | undefined;
  /** The step in hand, as the job carries it. */
  readonly at: Entry | undefined;
}

/** A step of the checklist, filled in from the job. */
export const view = ({ scene }: Asked, entry: Entry): Viewed => viewStep(work.steps.get(entry.id)!, entry, scene.voice);

/** Steps by their titles, one a line, under a heading. */
export function listed(asked: Asked, entries: readonly Entry[], topic: string, head: string): Reply {
  const views = entries.map((entry) => view(asked, entry));
  const lines = views.map(({ step }, i) => en.steps.item(i + 1, step.title));
  return { ...body(asked, views), topic, text: [head, ...lines].join('\n') };
}

/** One step told in full, with what to check and what to watch; its craft and what good looks like when they are asked for. */
export function told(
  asked: Asked,
  entry: Entry,
  worded: (title: string, text: string) => string,
  withCraft = false,
): Reply {
  const shown = view(asked, entry);
  const { step, record } = shown;
  const fill = filler(entry, asked.scene.voice);
  const checks = rulesNamed(asked.scene, record.rules);
  const text = [
    worded(step.title, step.text),
    ...(withCraft ? (record.craft ?? []).map((point) => en.steps.craft(point.title, fill(point.text))) : []),
    en.steps.check(step.checks),
    withCraft ? en.steps.good(fill(record.good)) : '',
    ...step.cautions.slice(0, 1).map(en.steps.watch),
    checks.find(({ status }) => status === 'stop' || status === 'caution')?.text,
  ];
  return { ...body(asked, [shown], checks), topic: record.id, text: text.filter(Boolean).join('\n') };
}

/** What every reply about steps has, its text aside. */
export function body({ scene, said, lift }: Asked, views: readonly Viewed[], named?: readonly Check[]): Reply {
  const { voice, understood, engine } = scene;
  const figures = [...new Set(views.flatMap((shown) => figuresShown(shown, voice)))];
  const rests = restsOn(voice.solved, figures);
  const used: Span[] = lift ? [lift.from] : [];
  const stage: GivenFact[] = said ? [{ quantity: 'stage', choice: said.step }] : [];
  return {
    ...blank,
    kind: 'steps',
    topic: 'checklist',
    text: '',
    steps: views.map(({ step }) => step),
    checks: named ?? checksOn(rests, voice),
    given: [...givenOf(understood.fresh), ...stage],
    kept: keptOf(understood.facts, rests),
    ignored: ignoredIn(scene, used),
    assumed: assumedBy(figures, voice),
    cautions: [...(views[0]?.step.cautions.slice(0, 1) ?? []), en.offTheRoad, en.agencyFirst],
    next: [en.steps.asks.done, en.steps.asks.next, en.steps.asks.whole],
    rules: { version: engine.knowledge.version },
    job: scene.job,
  };
}
