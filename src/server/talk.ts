import * as z from 'zod';
import { earlierLimit, type Talk } from '../ask/views/talk.ts';
import { jsonIn } from '../rules/json.ts';
import { questionLimit } from './limits.ts';

const talkSchema = z.strictObject({
  first: z.int().positive().max(1e6),
  start: z.exactOptional(z.unknown()),
  turns: z
    .array(
      z.strictObject({ question: z.string().max(questionLimit), units: z.exactOptional(z.enum(['us', 'metric'])) }),
    )
    .max(earlierLimit.questions),
  version: z.string().max(100),
});

/** Reads the talk a form carried; `undefined` when it is damaged. */
export function readTalk(text: string): Talk | undefined {
  return talkSchema.safeParse(jsonIn(text)?.json).data;
}
