import { restsOn } from '../calc/solve.ts';
import type { Working } from './reply.ts';
import { say, saySource } from './say.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';

/** What is asked for with the share added that the asker named, and how. */
export interface Added {
  readonly scene: Scene;
  readonly working?: Working;
  readonly note?: string;
}

/** Adds to a quantity the share the asker named for it ("plus 5 % waste"), where it is not in the figure already. */
export function withAdded(scene: Scene, id: string): Added {
  const { voice } = scene;
  const record = voice.knowledge.quantities.get(id);
  const fact = voice.solved.get(id);
  const share = record?.adds && voice.isGiven(record.adds.id) ? voice.solved.get(record.adds.id) : undefined;
  if (!record?.adds || !fact?.by || !share || share.value === 0 || restsOn(voice.solved, [id]).has(share.id))
    return { scene };
  const more = 1 + share.value;
  const solved = new Map(voice.solved).set(id, {
    ...fact,
    value: fact.value * more,
    low: fact.low * more,
    high: fact.high * more,
  });
  const unit = voice.unit(id);
  const [words, part] = [say(record, fact.value, unit), say(record.adds, share.value, voice.unit(share.id), true)];
  return {
    scene: { ...scene, voice: { ...voice, solved } },
    note: en.withShare(record.adds.title, part),
    working: {
      quantity: id,
      formula: en.addShare(record.title, record.adds.title),
      with: en.addShare(words, part),
      result: say(record, fact.value * more, unit),
      rule: `quantity/${record.adds.id}`,
      source: saySource(record.adds.sources[0]),
    },
  };
}
