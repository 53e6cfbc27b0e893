import { layKnowledge } from '../rules/knowledge.ts';
import type { LaidKnowledge } from '../rules/laid.ts';
import { commandIndex } from './commands.ts';
import { index as emergencyIndex, vocabulary as emergencyVocabulary } from './emergency.ts';
import { engine } from './engine.ts';
import type { LaidCues } from './laid.ts';
import { repairIndex } from './repairs.ts';
import { stageIndex } from './step-stage.ts';
import { layTitles } from './titles.ts';

/** What the build lays down in place of `rules/laid.ts`. */
export const rules: LaidKnowledge = layKnowledge(engine.knowledge);

/** What the build lays down in place of `laid.ts`. */
export const cues: LaidCues = {
  goals: engine.goals.table,
  options: engine.options.table,
  inWords: engine.inWords.table,
  open: engine.open.table,
  commands: commandIndex.table,
  repairs: repairIndex.table,
  stages: stageIndex.table,
  emergencies: emergencyIndex.table,
  titles: layTitles(engine.knowledge.records.quantities, engine.vocabulary, engine.small),
  words: engine.vocabulary.lay(),
  emergencyWords: emergencyVocabulary.lay(),
};
