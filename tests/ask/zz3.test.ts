import { test } from 'vitest';
import { sentence, scored } from './work.ts';
test('x', () => { for (const q of ['the ruts we filled are back already', 'looks open/dry', 'three tons left on the truck']) console.log(q, JSON.stringify([...sentence(q).places.keys()]), scored(q)); });
