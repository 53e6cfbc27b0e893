import type { RuleRecord } from '../rules/shapes.ts';
import { jobFacts } from './facts.ts';
import type { Goal } from './goal.ts';
import { figureOf } from './judging.ts';
import { blank } from './refusal.ts';
import type { Reply } from './reply.ts';
import { capital, fill, saySource } from './say.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';

/** Answers "why": the mechanism behind a rule or a figure, with where it comes from. */
export function whyReply(scene: Scene, goal: Goal): Reply {
  const record = recordOf(scene, goal);
  const lines = [
    capital(fill(record.because, (name) => figureOf(name, scene.voice))),
    standing(scene, record),
    en.sources(record.sources.map(saySource)),
  ];
  return {
    ...blank,
    kind: 'card',
    topic: goal.id,
    text: lines.filter(Boolean).join('\n'),
    cards: [{ id: `${record.kind}/${record.id}`, title: record.title, excerpt: record.because, score: 1 }],
    rules: { version: scene.engine.knowledge.version },
    job: { ...scene.job, facts: jobFacts(scene.understood.facts.filter(({ fresh }) => !fresh)) },
  };
}

function recordOf({ engine: { knowledge } }: Scene, { kind, id }: Goal): RuleRecord {
  const shelf = kind === 'quantity' ? knowledge.quantities : kind === 'limit' ? knowledge.limits : knowledge.practices;
  return shelf.get(id)!;
}

/** The figure the rule stands at, when it has one. */
function standing(scene: Scene, record: RuleRecord): string {
  const bound = record.kind === 'limit' ? (record.max ?? record.min) : record;
  const id = bound && 'id' in bound ? bound.id : undefined;
  const figure = id && figureOf(id, scene.voice);
  return figure ? capital(en.figure(scene.engine.knowledge.quantities.get(id)!.title, figure)) : '';
}
