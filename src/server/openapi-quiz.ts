import { screens } from '../ask/quiz/desk/call.ts';
import { formats } from '../ask/quiz/export/file.ts';
import { kinds, levels } from '../ask/quiz/shapes.ts';
import { seats, topics } from '../ask/quiz/topics.ts';
import { quizApi as words } from './wording/quiz.en.ts';

const page = { description: words.page, content: { 'text/html': {} } };
const pages = { 200: page, 422: { ...page, description: words.none } };

const kept = { ...pages, 404: { ...page, description: words.noClass }, 503: { ...page, description: words.noStore } };
const key = { name: 'key', in: 'path', required: true, schema: { type: 'string' } };

const among = (name: string, values: readonly string[], several: boolean) => ({
  name,
  in: 'query',
  schema: several ? { type: 'array', items: { enum: [...values] } } : { enum: [...values] },
});
const text = (name: string) => ({ name, in: 'query', schema: { type: 'string' } });

/** The fields by which a set is asked for, the same at every address of the desk. */
const blueprint = [
  among('topic', topics, true),
  among('seat', Object.keys(seats), false),
  among('level', levels, true),
  among('kind', kinds, true),
  { name: 'count', in: 'query', schema: { type: 'integer', minimum: 1, maximum: 100 } },
  text('seed'),
  among('variant', ['A', 'B'], false),
  among('units', ['us', 'metric'], false),
  { name: 'about', in: 'query', schema: { type: 'array', items: { type: 'string' } } },
  { name: 'swap', in: 'query', schema: { type: 'array', items: { type: 'string' } } },
  among('feedback', ['end', 'each'], false),
];

const get = (operationId: string, summary: string, parameters: readonly object[] = blueprint) => ({
  get: { operationId, summary, parameters, responses: pages },
});

/** The trainer's desk in the OpenAPI document. */
export const quizPaths = {
  [screens.desk]: get('quizDesk', words.desk),
  [screens.sheet]: get('quizSheet', words.sheet),
  [screens.key]: get('quizKey', words.key),
  [screens.tailgate]: get('quizTailgate', words.tailgate),
  [screens.take]: {
    ...get('quizTake', words.take),
    post: { operationId: 'quizMark', summary: words.mark, responses: pages },
  },
  [screens.signOff]: get('quizSignOff', words.signOff, [among('seat', Object.keys(seats), false)]),
  [screens.practice]: get('quizPractice', words.practice, []),
  [screens.kept]: { post: { operationId: 'quizKept', summary: words.kept, responses: pages } },
  [screens.classes]: {
    ...get('quizClassNew', words.classNew),
    post: {
      operationId: 'quizClassStart',
      summary: words.classStart,
      responses: { 303: { description: words.classStart }, ...kept },
    },
  },
  [`${screens.classes}/{key}`]: {
    get: { operationId: 'quizClass', summary: words.classSeen, parameters: [key], responses: kept },
    post: { operationId: 'quizClassAnswer', summary: words.classAnswer, parameters: [key], responses: kept },
  },
  [`${screens.classes}/{key}/file`]: {
    get: {
      operationId: 'quizClassFile',
      summary: words.classFile,
      parameters: [key, among('format', ['csv', 'json'], false)],
      responses: kept,
    },
  },
  [`${screens.classes}/{key}/erase`]: {
    post: { operationId: 'quizClassErase', summary: words.classErase, parameters: [key], responses: kept },
  },
  [screens.file]: {
    get: {
      operationId: 'quizFile',
      summary: words.file,
      parameters: [...blueprint, { ...among('format', formats, false), required: true }],
      responses: { 200: { description: words.fileGiven }, 422: pages[422] },
    },
  },
};
