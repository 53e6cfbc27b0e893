import * as z from 'zod';
import type { Request } from '../../ask/reply.ts';
import { questionLimit } from '../limits.ts';
import { en } from '../wording/en.ts';
import { anything } from './basics.ts';
import type { Expect, Same } from './same.ts';

/** What may be asked. `job`, `agency` and `rates` are handed on as they came: the engine judges them, and says what it drops. */
export const requestSchema = z
  .strictObject(
    {
      question: z
        .string(en.questionMissing)
        .max(questionLimit, en.questionTooLong(questionLimit))
        .refine((question) => question.trim() !== '', en.questionMissing)
        .meta({
          minLength: 1,
          description: 'The question, in plain words.',
          examples: ['how many tons for 300 x 12 ft at 2 in'],
        }),
      job: z
        .exactOptional(anything)
        .meta({ description: 'Whatever the last reply returned in `job`: opaque, to be sent back as it came.' }),
      units: z
        .exactOptional(z.enum(['us', 'metric'], en.unitsWrong))
        .meta({ description: 'Units of the answer where the question names none.' }),
      lang: z
        .exactOptional(z.enum(['en', 'es'], en.langWrong))
        .meta({ description: 'Language of the question and the answer.' }),
      agency: z
        .exactOptional(anything)
        .meta({ description: "An agency's own rules, which then come before the general ones." }),
      rates: z.exactOptional(anything).meta({
        description: 'A published file of what machines cost an hour, with its year; in force for this question.',
      }),
    },
    { error: ({ code }) => (code === 'unrecognized_keys' ? undefined : en.notAnObject) },
  )
  .meta({ id: 'Request' });

/** Fails to compile when the schema and the type part ways. */
export type RequestAgrees = Expect<Same<z.infer<typeof requestSchema>, Request>>;
