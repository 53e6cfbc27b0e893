import * as z from 'zod';
import { anything, text } from './basics.ts';

/** Most changes that are sent at a time. */
export const mostSent = 500;

/** What a phone sends: its own changes since the last time, and how many of the job's it has. Each change is read by the book itself. */
export const syncSchema = z
  .strictObject({
    changes: z.array(anything).max(mostSent).meta({ description: 'Changes of a job book.' }),
    after: z.int().nonnegative().max(1e6).meta({ description: 'Changes of the job that came from here before.' }),
    begin: z
      .exactOptional(z.literal(true))
      .meta({ description: 'Starts the job where there is none by this key: one that was begun without signal.' }),
  })
  .meta({ id: 'Sync' });

/** What comes back. */
export const syncedSchema = z
  .strictObject({
    role: z.enum(['look', 'record', 'edit']),
    length: z.int().nonnegative().meta({ description: 'Changes the job has now; send it back as after.' }),
    changes: z
      .array(anything)
      .meta({ description: 'The next of them after those named; ask again while there are more.' }),
    name: z.exactOptional(text),
  })
  .meta({ id: 'Synced' });
