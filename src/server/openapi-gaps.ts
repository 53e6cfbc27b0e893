import { gaps as words } from '../ask/wording/gaps.en.ts';
import { en } from './wording/en.ts';

const html = (description: string) => ({ description, content: { 'text/html': {} } });
const key = { name: 'key', in: 'path', required: true, schema: { type: 'string' } };
const q = { name: 'q', in: 'query', schema: { type: 'string' } };
const keeper = { 404: html(words.unknown), 503: html(en.title[503]) };

/** Questions without an answer in the OpenAPI document. */
export const gapPaths = {
  '/gaps': {
    get: { operationId: 'gap', summary: words.heading, parameters: [q], responses: { 200: html(words.heading) } },
    post: {
      operationId: 'gapSend',
      summary: words.send,
      responses: { 200: html(words.sent), 422: html(en.title[422]), 503: html(en.title[503]) },
    },
  },
  '/keeper/{key}': {
    get: {
      operationId: 'keeper',
      summary: words.keeper.title,
      parameters: [key],
      responses: { 200: html(words.keeper.title), ...keeper },
    },
    post: {
      operationId: 'keeperClear',
      summary: words.keeper.clear,
      parameters: [key],
      responses: { 303: { description: words.keeper.clear }, ...keeper },
    },
  },
  '/keeper/{key}/export.jsonl': {
    get: {
      operationId: 'keeperExport',
      summary: words.keeper.export,
      parameters: [key],
      responses: { 200: { description: words.keeper.export, content: { 'application/jsonl': {} } }, ...keeper },
    },
  },
};
