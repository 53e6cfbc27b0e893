import * as z from 'zod';
import type { Reply, Request } from '../ask/reply.ts';
import { gapPaths } from './openapi-gaps.ts';
import { jobPaths } from './openapi-job.ts';
import { quizPaths } from './openapi-quiz.ts';
import { requestSchema } from './schema/request.ts';
import { syncedSchema, syncSchema } from './schema/sync.ts';
import { en } from './wording/en.ts';

const ref = (name: string) => `#/components/schemas/${name}`;

/** What a question looks like, and its follow-up: shown in the document, and answered for real. */
const firstQuestion: Request = { question: 'how many tons for 300 x 12 ft at 2 in' };
const followUp: Request = { question: 'and at 14 feet?', units: 'us' };

/** The API as an OpenAPI 3.1 document, made from the schemas that requests are held against; its examples are real replies. */
export async function openApi(ask: (request: Request) => Reply) {
  const first = ask(firstQuestion);
  const second: Request = { ...followUp, job: first.job };
  return {
    openapi: '3.1.0',
    info: { title: 'Bladehand', version: '1', description: en.api.about },
    paths: {
      '/api/ask': {
        post: {
          operationId: 'ask',
          summary: en.api.ask,
          requestBody: {
            required: true,
            content: json(ref('Request'), { first: { value: firstQuestion }, next: { value: second } }),
          },
          responses: {
            200: {
              description: en.api.reply,
              content: json(ref('Reply'), { first: { value: first }, next: { value: ask(second) } }),
            },
            ...problems([400, 413, 415, 422, 500]),
          },
        },
      },
      '/': {
        get: { operationId: 'page', summary: en.api.page, responses: { 200: page } },
        post: { operationId: 'askOnPage', summary: en.api.form, responses: { 200: page, 422: page } },
      },
      ...quizPaths,
      ...kept,
      ...jobPaths,
      ...gapPaths,
      '/sheet': {
        get: { operationId: 'sheetPage', summary: en.api.noSheet, responses: { 200: page } },
        post: { operationId: 'sheetOfJob', summary: en.api.sheet, responses: { 200: page } },
      },
      '/openapi.json': {
        get: { operationId: 'openApi', summary: en.api.document, responses: { 200: { description: en.api.document } } },
      },
      '/health': {
        get: {
          operationId: 'health',
          summary: en.api.health,
          responses: { 200: { description: en.api.healthy, content: json(ref('Health')) }, ...problems([500]) },
        },
      },
    },
    components: { schemas: await schemas() },
  };
}

const page = { description: en.api.answerPage, content: { 'text/html': {} } };

/** What a browser fetches by itself to keep the page for where there is no signal. */
const kept = Object.fromEntries(
  Object.entries(en.api.kept).map(([path, { id, summary }]) => [
    path,
    { get: { operationId: id, summary, responses: { 200: { description: summary } } } },
  ]),
);

function problems(statuses: readonly (400 | 413 | 415 | 422 | 500)[]) {
  const content = { 'application/problem+json': { schema: { $ref: ref('Problem') } } };
  return Object.fromEntries(statuses.map((status) => [status, { description: en.title[status], content }]));
}

function json(schema: string, examples?: Record<string, { value: unknown }>) {
  return { 'application/json': { schema: { $ref: schema }, ...(examples ? { examples } : {}) } };
}

export const problemSchema = z
  .strictObject({
    type: z.literal('about:blank'),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    errors: z.exactOptional(z.array(z.strictObject({ detail: z.string(), pointer: z.string() }))),
  })
  .meta({ id: 'Problem', description: 'RFC 9457 problem details.' });

export const healthSchema = z
  .strictObject({ status: z.literal('ok'), rules: z.strictObject({ version: z.string() }) })
  .meta({ id: 'Health' });

/** Every schema under its own name; a part that has a name is referred to, not repeated. */
async function schemas(): Promise<Record<string, unknown>> {
  // Made only now: no answer is held against it, so no start need pay for it.
  const { replySchema } = await import('./schema/reply.ts');
  const all = z.toJSONSchema(
    z.tuple([requestSchema, replySchema, problemSchema, healthSchema, syncSchema, syncedSchema]),
  );
  return JSON.parse(JSON.stringify(all.$defs).replaceAll('#/$defs/', ref('')));
}
