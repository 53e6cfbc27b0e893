import * as z from 'zod';
import { en } from '../wording/en.ts';
import { number, span, text, unit } from './basics.ts';

const depths = z.array(number);

const station = z
  .strictObject({
    label: text,
    at: number,
    offsets: z.array(number),
    readings: depths,
    average: number,
    deepest: number,
    lifts: z.int().nonnegative(),
    from: z.exactOptional(span),
  })
  .meta({ id: 'SurveyStation', description: en.survey.station });

const volume = z
  .strictObject({ method: z.enum(['trapezoid', 'simpson']), number, unit, text })
  .meta({ id: 'SurveyVolume' });
const low = z
  .strictObject({ label: text, at: number, deepest: number, lifts: z.int().positive() })
  .meta({ id: 'SurveyLow', description: en.survey.low });

/** Depth readings of a patch and what comes of them. */
export const survey = z
  .strictObject({
    units: z.strictObject({ along: unit, across: unit, depth: unit }),
    width: number,
    stations: z.array(station),
    straightedge: z.exactOptional(z.strictObject({ number, unit })),
    volumes: z.array(volume),
    deepest: z.strictObject({ label: text, at: number, offset: number, depth: number }),
    lift: z.strictObject({ most: number, overAll: z.int().nonnegative() }),
    fill: z.array(low),
  })
  .meta({ id: 'Survey', description: en.survey.about });

/** The readings as the job carries them. */
export const jobSurvey = z.strictObject({
  turn: z.int().nonnegative(),
  units: z.strictObject({ along: z.enum(['ft', 'm']), depth: z.enum(['in', 'mm']) }),
  rows: z.array(
    z.strictObject({
      label: z.exactOptional(text),
      at: z.exactOptional(number),
      readings: depths,
      width: z.exactOptional(number),
    }),
  ),
  offsets: z.exactOptional(z.array(number)),
  across: z.exactOptional(z.boolean()),
  straightedge: z.exactOptional(number),
  unread: z.exactOptional(z.array(text)),
});
