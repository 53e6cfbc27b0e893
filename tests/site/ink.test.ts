import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const base = readFileSync(new URL('../../src/server/assets/base.css', import.meta.url), 'utf8');

/** The colours that a rule of the style sheet sets, by name. */
function tokens(selector: string): Map<string, string> {
  const from = base.indexOf(`${selector} {`);
  expect(from, selector).toBeGreaterThanOrEqual(0);
  const block = base.slice(from, base.indexOf('}', from));
  return new Map([...block.matchAll(/--([a-z-]+): (#[0-9a-f]{3,6});/g)].map(([, name, colour]) => [name!, colour!]));
}

/** Relative luminance by WCAG 2.2, of a colour written #rgb or #rrggbb. */
function luminance(colour: string): number {
  const hex = colour.length === 4 ? colour.replace(/[0-9a-f]/g, '$&$&') : colour;
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light! + 0.05) / (dark! + 0.05);
}

test('the formula gives the ratios of the standard', () => {
  expect(contrast('#000', '#fff')).toBeCloseTo(21, 9);
  // Known pairs: the lightest grey with 4.5 to 1 on white, and with 7 to 1.
  expect(contrast('#767676', '#fff')).toBeCloseTo(4.54, 2);
  expect(contrast('#595959', '#ffffff')).toBeCloseTo(7.0, 2);
});

const day = tokens(':root');
const night = tokens(':root[data-light="night"]');

describe.each([
  ['day', day],
  ['night', new Map([...day, ...night])],
])('every pair of colours by %s', (_, colours) => {
  const of = (name: string) => colours.get(name)!;

  test.each(['ink', 'soft', 'action', 'stop', 'holds', 'care'])('%s on paper is read in the sun: 7 to 1', (name) => {
    expect(contrast(of(name), of('paper'))).toBeGreaterThanOrEqual(7);
  });

  test('what stands on a solid box, on a button and on the bar of cautions: 7 to 1', () => {
    expect(contrast(of('on-solid'), of('solid'))).toBeGreaterThanOrEqual(7);
    expect(contrast(of('paper'), of('action'))).toBeGreaterThanOrEqual(7);
    const answer = readFileSync(new URL('../../src/server/assets/answer.css', import.meta.url), 'utf8');
    const [, ground, letters] = /\.cautions \{[^}]*background: (#\w+);\s*color: (#\w+);/.exec(answer)!;
    expect(contrast(ground!, letters!)).toBeGreaterThanOrEqual(7);
  });

  test('edges of fields, boxes and buttons stand out from the paper: 3 to 1', () => {
    for (const name of ['line', 'ink', 'action', 'solid'])
      expect(contrast(of(name), of('paper'))).toBeGreaterThanOrEqual(3);
  });

  test('every colour of the sheet is one of these', () => {
    const held = ['ink', 'soft', 'action', 'stop', 'holds', 'care', 'paper', 'line', 'solid', 'on-solid'];
    expect([...colours.keys()].sort()).toEqual([...held].sort());
  });
});

test('the night of the phone and the night that was chosen are the same', () => {
  expect(tokens(':root:not([data-light="day"])')).toEqual(night);
});
