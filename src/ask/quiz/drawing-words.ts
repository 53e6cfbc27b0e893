import { hazardText, sceneWords } from '../wording/quiz-hazards.en.ts';
import { hazardOf, type ZoneScene } from './hazards.ts';

/** What a drawing shows, in words: for those who do not see it, and for formats that hold no drawing. */
export function wordsOf(scene: ZoneScene): string {
  const parts = (Object.keys(scene) as (keyof ZoneScene)[]).map(
    (part) => (sceneWords[part] as Readonly<Record<string, string>>)[scene[part]]!,
  );
  return hazardText.drawing(parts.join(' '));
}

/** The same by the id of the drawing; undefined where there is none. */
export function drawingInWords(id: string | undefined): string | undefined {
  const hazard = hazardOf(id);
  return hazard && wordsOf(hazard.scene);
}
