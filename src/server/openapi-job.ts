import { bookPage as words } from '../ask/wording/book-page.en.ts';
import { en } from './wording/en.ts';
import { job } from './wording/job.en.ts';

const html = (description: string) => ({ description, content: { 'text/html': {} } });
const key = { name: 'key', in: 'path', required: true, schema: { type: 'string' } };
const day = { name: 'day', in: 'path', required: true, schema: { type: 'string', format: 'date' } };
const opened = { 404: html(job.unknown), 410: html(job.revoked), 503: html(en.title[503]) };
const problem = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
});

const get = (operationId: string, summary: string, parameters: readonly object[] = [key]) => ({
  operationId,
  summary,
  parameters,
  responses: { 200: html(summary), ...opened },
});
const post = (operationId: string, summary: string, parameters: readonly object[] = [key]) => ({
  ...get(operationId, summary, parameters),
  responses: {
    200: html(summary),
    303: { description: summary },
    403: html(job.notEditor),
    422: html(en.title[422]),
    ...opened,
  },
});
const file = (operationId: string, summary: string, type: string) => ({
  get: {
    operationId,
    summary,
    parameters: [key],
    responses: { 200: { description: summary, content: { [type]: {} } }, ...opened },
  },
});
const json = (name: string) => ({ 'application/json': { schema: { $ref: `#/components/schemas/${name}` } } });

/** The job book in the OpenAPI document. */
export const jobPaths = {
  '/job': { get: get('jobNew', words.start.heading, []), post: post('jobStart', words.start.go, []) },
  '/job/{key}': { get: get('job', words.totals), post: post('jobWrite', words.buttons.save) },
  '/job/{key}/links': { get: get('jobLinksShown', words.forms.links), post: post('jobLinks', words.forms.links) },
  '/job/{key}/day/{day}': { get: get('jobDay', words.records, [key, day]) },
  '/job/{key}/season': { get: get('jobSeason', words.season), post: post('jobSeasonOf', words.seasonGo) },
  '/job/{key}/export.csv': file('jobCsv', words.csv, 'text/csv'),
  '/job/{key}/export.json': file('jobJson', words.json, 'application/json'),
  '/api/jobs/{key}/sync': {
    post: {
      operationId: 'jobSync',
      summary: job.sync,
      parameters: [key],
      requestBody: { required: true, content: json('Sync') },
      responses: {
        200: { description: job.synced, content: json('Synced') },
        ...Object.fromEntries(
          ([400, 403, 404, 410, 413, 422, 503] as const).map((status) => [status, problem(en.title[status])]),
        ),
      },
    },
  },
};
