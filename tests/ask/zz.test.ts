import { test } from 'vitest';
import { goals, sentence, talk } from './work.ts';
test('x', () => { for (const q of ['how many depth readings and where','raining','3 inches deep','the windrow is built, what next','lift 2 is down','what goes in the report']) console.log(q, JSON.stringify([...sentence(q).places.keys()]), goals(q).slice(0,4));
 const r = talk('the windrow is built, what next', '3 inches deep'); for (const x of r) console.log(x.kind, x.topic, JSON.stringify(x.job), x.text.slice(0,200)); });
