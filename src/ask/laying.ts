import { layKnowledge } from '../rules/knowledge.ts';
import type { LaidKnowledge } from '../rules/laid.ts';
import { index as emergencies } from './emergency.ts';
import { engine } from './engine.ts';
import type { LaidCues } from './laid.ts';

/** What the build lays down in place of `rules/laid.ts`. */
export const rules: LaidKnowledge = layKnowledge(engine.knowledge);

/** What the build lays down in place of `laid.ts`. */
export const cues: LaidCues = {
  goals: engine.goals.table,
  options: engine.options.table,
  inWords: engine.inWords.table,
  open: engine.open.table,
  emergencies: emergencies.table,
};
