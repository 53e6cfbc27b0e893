import { toBase } from '../calc/quantity.ts';
import { unitRow } from '../calc/units.ts';
import { sayFigure } from '../calc/wording.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import { isPlausible } from './as-role.ts';
import { clarifying } from './clarifying.ts';
import type { Choice, Reply } from './reply.ts';
import { say } from './say.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';

/** Asks again for a figure that cannot be taken, with a few that are common; it is not kept. */
export function outOfRange(scene: Scene, record: QuantityRecord, text: string): Reply {
  const choices: Choice[] = (record.question?.choices ?? []).map(({ number, unit }) => {
    const words = sayFigure(toBase(number, unit), unit, { given: true });
    return { text: words, send: words };
  });
  return clarifying(
    without(scene, record.id),
    record.id,
    'out-of-range',
    { quantity: record.id, text, choices },
    record.id,
  );
}

/** Says between which figures a quantity is worked with. */
export function unlikelyText(figure: string, record: QuantityRecord): string {
  const { min, max } = record.plausible!;
  const [low, high] = [min, max].map(({ number, unit }) => say(record, toBase(number, unit), unit, true));
  return en.unlikely(figure, record.title, low!, high!);
}

/** A figure left over that would be the one wanted, were it of a size that can be worked with: "buffer at 95 mph". */
export function refusedAs(scene: Scene, wanted: string): Reply | undefined {
  const record = scene.engine.knowledge.quantities.get(wanted);
  if (!record?.plausible) return undefined;
  const { unbound, system } = scene.understood;
  const figure = unbound.find((each) => {
    const unit = each.unit ?? (record.bare ? record.bare[system] : undefined);
    return unit && unitRow(unit).dimension === record.dimension && !isPlausible(each, unit, record);
  });
  return figure && outOfRange(scene, record, unlikelyText(scene.request.question.slice(...figure.at), record));
}

/** The scene with a figure that cannot be taken out of the job again. */
function without(scene: Scene, quantity: string): Scene {
  return { ...scene, job: { ...scene.job, facts: scene.job.facts.filter((fact) => fact.quantity !== quantity) } };
}
