import { allParts } from '../../src/ask/ask.ts';
import { type Engine, engine as shipped } from '../../src/ask/engine.ts';
import { jobFacts, knownFrom } from '../../src/ask/facts.ts';
import { emptyJob } from '../../src/ask/job.ts';
import type { UnitSystem } from '../../src/ask/reply.ts';
import type { Scene } from '../../src/ask/scene.ts';
import { understand } from '../../src/ask/understand.ts';
import { unitsOf } from '../../src/ask/units.ts';
import { solve } from '../../src/calc/solve.ts';
import { startOf } from '../../src/rules/start.ts';

/** All that an answer to a question is made from, as at the start of a job. */
export function sceneOf(question: string, units?: UnitSystem, engine: Engine = shipped): Scene {
  const request = { question, ...(units ? { units } : {}) };
  const understood = understand(engine, request, emptyJob);
  const { facts, turn } = understood;
  const solved = solve(engine.knowledge.network, startOf(engine.knowledge, knownFrom(facts)));
  const isGiven = (id: string): boolean => facts.some(({ quantity }) => quantity === id);
  const voice = { knowledge: engine.knowledge, solved, unit: unitsOf(engine, understood), isGiven };
  return { engine, understood, voice, job: { v: 1, turn, facts: jobFacts(facts) }, request, parts: allParts };
}
