import { type Said, type Turn, verbs } from './verbs.ts';

/**
 * A talk is a readable file. `> ` lines are what a person types, in order; `>> ` presses the button of the last reply that
 * bears these words. The lines under each say what the reply must hold (see `verbs.ts`); `#` opens a comment.
 *
 * Before the first question stand the settings of the whole talk:
 *   units metric          lang es          agency { "name": …, "source": … }
 * A line `with job …` under a question sends that in place of what the last reply handed back; `with units`, `with lang`
 * and `with agency` change the setting for this question alone.
 */
export interface Talk {
  readonly settings: Readonly<Record<string, unknown>>;
  readonly turns: readonly Turn[];
}

/** Reads a talk. Throws an Error that names the line when one makes no sense. */
export function readTalk(text: string): Talk {
  const settings: Record<string, unknown> = {};
  const turns: { -readonly [K in keyof Turn]: Turn[K] }[] = [];
  text.split('\n').forEach((raw, i) => {
    const line = raw.trim();
    if (!line || line.startsWith('#')) return;
    const said = saidIn(line);
    const turn = turns.at(-1);
    if (said) turns.push({ said, line: i + 1, sends: {}, wants: [] });
    else if (turn && line.startsWith('with ')) turn.sends = { ...turn.sends, ...setting(line.slice(5), i + 1) };
    else if (turn) turn.wants = [...turn.wants, known(line, i + 1)];
    else Object.assign(settings, setting(line, i + 1));
  });
  return { settings, turns };
}

function saidIn(line: string): Said | undefined {
  if (line.startsWith('>> ')) return { presses: line.slice(3) };
  return line.startsWith('> ') ? { types: line.slice(2) } : undefined;
}

function setting(line: string, at: number): Record<string, unknown> {
  const [name = '', ...rest] = line.split(' ');
  const value = rest.join(' ');
  if (name === 'units' || name === 'lang') return { [name]: value };
  if (name === 'job' || name === 'agency') return { [name]: JSON.parse(value) };
  throw new Error(`line ${at}: "${line}" is no setting: units, lang, agency, or job`);
}

function known(line: string, at: number): string {
  const verb = line.replace(/^not /, '').split(' ')[0]!;
  if (!Object.hasOwn(verbs, verb))
    throw new Error(`line ${at}: "${verb}" is no check: ${Object.keys(verbs).join(', ')}`);
  return line;
}
