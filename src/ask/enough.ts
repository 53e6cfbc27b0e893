import { compare, toBase } from '../calc/quantity.ts';
import type { Fact } from './facts.ts';
import { needOf } from './need.ts';
import type { Verdict } from './reply.ts';
import { say } from './say.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';

/** How near two figures must be to count as the same, when somebody asks whether theirs is right. */
const same = 0.03;

/** How a figure over or under is told, by which figures are good. */
const ways = {
  'no-smaller': { over: 'over', under: 'short' },
  'no-larger': { over: 'beyond', under: 'within' },
  'the-same': { over: 'beyond', under: 'short' },
} as const;
const good: ReadonlySet<string> = new Set(['right', 'over', 'within']);

/** A figure the asker gave for the very thing they ask about, held against what the other facts make it. */
export interface Comparison {
  readonly scene: Scene;
  readonly verdict: Verdict;
}

/**
 * Compares the asker's own figure with the need. Undefined when they gave none, or nothing else leads to it. The scene
 * that comes back is worked without the figure in question.
 */
export function compared(scene: Scene, id: string): Comparison | undefined {
  const { understood, engine, voice } = scene;
  const { quantities } = engine.knowledge;
  const isChecked = understood.sentence.places.has('@check');
  const figures = understood.fresh.filter((fact): fact is Fact & { number: number } => 'unit' in fact);
  const own =
    figures.find(({ quantity }) => quantity === id) ??
    (isChecked ? figures.find(({ quantity }) => quantities.get(quantity)?.heldAgainst?.id === id) : undefined);
  const record = quantities.get(id);
  if (!own || !('unit' in own) || !record) return undefined;
  const found = needOf(
    engine,
    understood.facts.filter((fact) => fact !== own && fact.quantity !== own.quantity),
    id,
  );
  if (!found) return undefined;
  const { need, solved, others: facts } = found;
  const has = toBase(own.number, own.unit);
  const close = Math.abs(has - need.value) <= same * need.value;
  const isOver = compare(has, need.value) > 0;
  const way = close ? 'right' : ways[record.enough ?? 'no-smaller'][isOver ? 'over' : 'under'];
  const words = (base: number, given = false): string => say(record, base, own.unit, given);
  const gap = words(Math.abs(has - need.value));
  const text = en.compared(way, words(has, true), words(need.value), gap, record.title);
  return {
    scene: {
      ...scene,
      understood: { ...understood, facts },
      voice: { ...voice, solved, isGiven: (each) => each !== id && each !== own.quantity && voice.isGiven(each) },
      // It was asked about, not stated: what is asked next must not rest on it, nor be at odds with it.
      job: {
        ...scene.job,
        checked: id,
        facts: scene.job.facts.filter(({ quantity }) => quantity !== id && quantity !== own.quantity),
      },
    },
    verdict: { rule: id, status: good.has(way) ? 'ok' : 'caution', text },
  };
}
