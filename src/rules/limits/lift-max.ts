import liftCount from '../quantities/lift-count.ts';
import liftMax from '../quantities/lift-max.ts';
import liftThickness from '../quantities/lift-thickness.ts';
import { commonPractice, limit } from '../shapes.ts';
import { ufcRepair } from '../sources-craft.ts';

export default limit({
  id: 'lift-max',
  title: 'thickest lift',
  on: liftThickness,
  max: liftMax,
  supposes: [liftCount],
  breaks: 'caution',
  stopFrom: { number: 1.5, unit: 'in' },
  because:
    'A roller packs only so deep, and a blade lays a thin lift truer; a thick lift shoves under the drum and stays soft below.',
  sources: [commonPractice, ufcRepair('ch. 7, p. 40: 2 to 3 in for lifts in ruts and depressions')],
  cues: [
    '?one lift lay|put|place @check',
    '@check thick',
    'thick|thickness lift @check',
    '@check lay|put down -tack -residual',
    '@check #thin one+lift|pass',
    '@check #thin single|one|#number+lift',
    '@check #length lift -stone -mix -nominal',
    'why lift inch',
    'why one|thin+lift',
    'why #length lift',
    'foreman|boss|all one+go|shot|pop|pass #length -ton',
    'all one|single+go|shot|pop #length',
    '@check #length one+go|shot|pop',
    '@check #length lift thick|rolled|compacted -stone',
    'check+thick #length -tack -stone',
    'check+thick lift',
    '@check #thin single|one go|shot|pop|pass|time',
    '@check #thin lay|laid -stone -tack -residual -rut -edge -gap -overlap -drum -cone -sign',
    'one heavy|thick|big pass|lift #thin',
    'drop|put #thin all+one|once -stone',
    '#thin all+at+once',
    '#thin single|one+go|shot|pop|pass|lift -stone',
    'lift come|came #thin rolled|roll|after',
    '#thin rolled|compacted @check -stone',
    'why keep|so|only thin|inch lift|inch',
    'why lay|put|not #thin',
    'why not thick|more lift',
    '#thin roll|rolled @check -stone -tack -residual -edge -gap -overlap -drum -high -straightedge',
  ],
  text: {
    ok: '{on} is within the {limit} a lift may be, rolled.',
    caution: '{on} is thicker than the {limit} of the craft: right for some hot mixes, where the agency allows it.',
    stop: '{on} is over the {limit} a lift may be, rolled: one that thick takes {lift-split} lifts.',
    cannotTell: 'Tell me how thick the lift is, rolled, and I can say whether it is within {limit}.',
  },
  fix: 'Split it into more lifts and roll each one.',
  examples: {
    holds: { 'lift-thickness': [0.75, 'in'] },
    boundary: { 'lift-thickness': [1, 'in'] },
    breaks: { 'lift-thickness': [2, 'in'] },
    cannotTell: {},
    also: [
      { facts: { 'lift-thickness': [1.25, 'in'] }, is: 'caution' },
      { facts: { 'lift-thickness': [1.5, 'in'] }, is: 'stop' },
      { facts: { 'lift-thickness': [25.4, 'mm'] }, is: 'ok' },
      { facts: { 'patch-depth': [3, 'in'] }, is: 'ok' },
      { facts: { 'patch-depth': [3, 'in'], 'lift-count': [2, '1'] }, is: 'stop' },
      { facts: { 'lift-thickness': [1.5, 'in'], 'lift-max': [1.5, 'in'] }, is: 'ok' },
    ],
  },
});
