import type { Context } from 'hono';
import type { UnitSystem } from '../ask/reply.ts';
import { jsonIn } from '../rules/json.ts';

/** What the form of the page sent. */
export interface Form {
  /** What stood in the question box. */
  readonly typed: string;
  /** A question from a button, which goes before what was typed. */
  readonly send?: string;
  /** A fact to put into the box, to be changed there. */
  readonly change?: string;
  readonly units?: UnitSystem;
  /** The job of the last reply; text that is no JSON is handed on as it is, for the engine to drop and say so. */
  readonly job?: unknown;
  /** The earlier questions, as they were carried. */
  readonly talk?: string;
  readonly ticks: ReadonlySet<string>;
}

/** The fields of a form as they were sent; nothing where the body is no form, which the caller is to say. */
export const fieldsOf = ({ req }: Context): Promise<FormData | undefined> => req.formData().catch(() => undefined);

/** Ticks beyond these are let go: no page has as many boxes. */
const mostTicks = 1000;

/** Reads the fields of the form; fields that are missing or of another kind count as not sent. */
export function readForm(fields: URLSearchParams | FormData): Form {
  const field = (name: string): string | undefined => {
    const value = fields.get(name);
    return typeof value === 'string' && value !== '' ? value : undefined;
  };
  const [send, change, units, job, talk] = ['send', 'change', 'units', 'job', 'talk'].map(field);
  const ticks = fields.getAll('tick').slice(0, mostTicks);
  return {
    typed: field('question') ?? field('q') ?? '',
    ...(send ? { send } : {}),
    ...(change ? { change } : {}),
    ...(units === 'us' || units === 'metric' ? { units } : {}),
    ...(job ? { job: parsed(job) } : {}),
    ...(talk ? { talk } : {}),
    ticks: new Set(ticks.filter((tick) => typeof tick === 'string')),
  };
}

function parsed(text: string): unknown {
  const read = jsonIn(text);
  return read ? read.json : text;
}
