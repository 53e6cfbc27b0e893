import type { Figure } from '../calc/read/reading.ts';
import { clarifying } from './clarifying.ts';
import type { Choice, Reply } from './reply.ts';
import type { Scene } from './scene.ts';
import { en } from './wording/en.ts';

/** What a figure that can be read two ways could be, each as it would be typed to leave no doubt. Empty when one reading will do. */
function readings({ unclear }: Figure, typed: string, system: 'us' | 'metric'): string[] {
  if (unclear === undefined) return [];
  const value = typed.replace(/[^\d.,/ -].*$/s, '').trim();
  if (/^\d+\/\d+$/.test(unclear)) return mixedReadings(unclear);
  if (/^\d+,\d+$/.test(unclear)) return [unclear.replace(',', '.'), unclear.replace(',', ' and ')];
  if (unclear === 'grados') return [`${value} °F`, `${value} °C`];
  if (unclear === 'm' && system === 'us') return [`${value} meters`, `${value} miles`];
  return [];
}

/** "11/2": one and a half with its space lost, or eleven halves. */
function mixedReadings(typed: string): string[] {
  const [over = '', under = ''] = typed.split('/');
  return over.length === 2 ? [`${over[0]} ${over[1]}/${under}`, String(Number(over) / Number(under))] : [];
}

/** Asks which of two readings is meant, where a figure of the question has two and the answer would differ. */
export function unclearFigure(scene: Scene): Reply | undefined {
  const { sentence, system } = scene.understood;
  for (const at of sentence.figures) {
    const token = sentence.tokens[at];
    if (token?.kind !== 'figure') continue;
    const typed = scene.request.question.slice(...token.at);
    const found = readings(token.figure, typed, system);
    if (found.length < 2) continue;
    const before = scene.request.question.slice(0, token.at[0]);
    const after = scene.request.question.slice(token.at[1]);
    const unit = /[^\d.,/\s-].*$/s.exec(typed)?.[0] ?? '';
    const choices = found.map((text): Choice => {
      const whole = /[a-z°]/i.test(text) ? text : `${text} ${unit}`.trim();
      return { text: whole, send: `${before}${whole}${after}` };
    });
    return clarifying(scene, 'ambiguous', 'ambiguous', {
      quantity: 'figure',
      text: en.whichReading(
        typed,
        choices.map(({ text }) => text),
      ),
      choices,
    });
  }
  return undefined;
}
