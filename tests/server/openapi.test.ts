import { expect, test } from 'vitest';
import { healthSchema } from '../../src/server/openapi.ts';
import { replySchema } from '../../src/server/schema/reply.ts';
import { requestSchema } from '../../src/server/schema/request.ts';
import { app } from './fixtures.ts';

interface Content {
  readonly content: { readonly 'application/json': { readonly examples: Record<string, { value: unknown }> } };
}
interface Operation {
  readonly operationId: string;
  readonly requestBody: Content;
  readonly responses: Record<number, Content>;
}
interface Document {
  readonly openapi: string;
  readonly paths: Record<string, Record<string, Operation>>;
  readonly components: {
    readonly schemas: Record<string, { additionalProperties: unknown; properties: Record<string, unknown> }>;
  };
}

const document = (await (await app.request('/openapi.json')).json()) as Document;

test('is OpenAPI 3.1 with an operation for every route', () => {
  expect(document.openapi).toBe('3.1.0');
  const documented = Object.entries(document.paths).flatMap(([path, item]) =>
    Object.keys(item).map((method) => `${method.toUpperCase()} ${path}`),
  );
  const served = app.routes
    .filter(({ method, path }) => ['GET', 'POST'].includes(method) && !path.startsWith('/assets/'))
    .map(({ method, path }) => `${method} ${path.replace(/:([a-z]+)/g, '{$1}')}`);
  expect(new Set(documented)).toEqual(new Set(served));
});

test('operations have names of their own', () => {
  const ids = Object.values(document.paths).flatMap((item) =>
    Object.values(item).map(({ operationId }) => operationId),
  );
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toContain('ask');
});

test('its examples fit its schemas', async () => {
  const { requestBody, responses } = document.paths['/api/ask']!.post!;
  const values = ({ content }: Content) =>
    Object.values(content['application/json'].examples).map(({ value }) => value);
  const [requests, replies] = [values(requestBody), values(responses[200]!)];
  expect([requests.length, replies.length]).toEqual([2, 2]);
  for (const request of requests) requestSchema.parse(request);
  for (const reply of replies) replySchema.parse(reply);
  healthSchema.parse(await (await app.request('/health')).json());
});

test('every reference leads to a schema, and every object says which members it has', () => {
  const text = JSON.stringify(document);
  const names = Object.keys(document.components.schemas);
  for (const [, name] of text.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)) expect(names).toContain(name);
  expect(text.match(/"\$ref":"(?!#\/components\/schemas\/)/g)).toBeNull();
  expect(names).toEqual(expect.arrayContaining(['Request', 'Reply', 'Value', 'Check', 'Job', 'Problem']));
  expect(document.components.schemas.Reply?.additionalProperties).toBe(false);
  expect(document.components.schemas.Request?.properties.question).toMatchObject({ minLength: 1, maxLength: 2000 });
});
