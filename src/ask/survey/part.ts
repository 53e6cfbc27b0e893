import { refuse } from '../refusal.ts';
import type { ReadingsPart } from '../scene.ts';
import { surveyWords } from '../wording/survey.ts';
import { hearSurvey, mostReadings } from './hear.ts';
import { surveyed, withSurvey } from './in-force.ts';
import { askAboutSurvey, tellSurvey } from './tell.ts';

/** Answers to depth readings, as a part of the engine. */
export const readingsPart: ReadingsPart = {
  hear(engine, request, job) {
    const heard = hearSurvey(engine, request, job);
    return heard === 'too-many' ? refuse('out-of-range', surveyWords.tooMany(mostReadings), job, engine) : heard;
  },
  with: withSurvey,
  gives: (quantity) => surveyed.has(quantity),
  tell: (scene, inForce, answered) => askAboutSurvey(scene, inForce) ?? tellSurvey(scene, inForce, answered()),
};
