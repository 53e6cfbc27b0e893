import { givenOf } from './facts.ts';
import { ignoredIn } from './ignored.ts';
import { blank } from './refusal.ts';
import type { Clarify, Reason, Reply } from './reply.ts';
import type { Scene } from './scene.ts';

/** A reply that asks one thing back. */
export function clarifying(scene: Scene, topic: string, reason: Reason, clarify: Clarify, asked?: string): Reply {
  return {
    ...blank,
    kind: 'clarify',
    topic,
    reason,
    text: clarify.text,
    clarify,
    given: givenOf(scene.understood.fresh),
    ignored: ignoredIn(scene),
    rules: { version: scene.engine.knowledge.version },
    job: asked ? { ...scene.job, asked } : scene.job,
  };
}
