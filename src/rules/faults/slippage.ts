import crackLook from '../choices/crack-look.ts';
import { fault } from '../shapes-work.ts';
import { ufcFlexible } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'slippage',
  title: 'slippage cracks',
  seen: 'half-moon cracks, and a mat that slides on what is under it',
  because: 'Without bond the lift is a loose skin: braking wheels drag it, and it opens behind them.',
  sources: [taught, ufcFlexible('ch. 3: no tack also slips')],
  cues: [
    'patch|mat|lift slid|slide|slip stop|sign|light|bar|intersection|hill|downhill',
    'slip crack|patch|mat|lift|road -hill -spill',
    'slippage',
    'half-moon',
    'half-moon new|fresh|mat|patch|mix|lift|slid|slide',
    'patch|mat|lift slide|slid|moved road|old|under|brake|stop|loose|off -roller -back -hill -bank -ground',
    "patch|mat|mix|lift not|isn't|wont|won't|doesn't stick|bond|hold -drum -roller",
    'peel patch|mat|lift|sheet -drum -roller -wheel',
    'patch|mat|lift peel|delaminate',
    'patch|mat|lift come|came+loose -stone',
    "wont|won't|not|doesn't|didn't+stick|bond old|road|pavement",
  ],
  causes: [
    {
      text: 'dust, mud or water under the tack',
      remedy: 'sweep and dry until tack meets stone',
      rule: 'tack-clean-dry',
      source: taught,
    },
    {
      text: 'no tack, or hardly any',
      remedy: 'an even film, every time',
      rule: 'tack-rate',
      source: ufcFlexible('ch. 3: no tack also slips'),
    },
    {
      text: 'too much tack, or tack not broken',
      remedy: 'less, and wait until it has broken',
      rule: 'tack-set',
      source: taught,
    },
    {
      text: 'braking and turning wheels on a thin lift',
      remedy: 'dense hot mix in thin rolled lifts there, or the engineer',
      source: taught,
    },
  ],
  now: 'Cut it out square down to what it slid on, clean, tack, and lay it again.',
  nextTime: 'Sweep, dry, one even film, broken before it is covered.',
  apart: {
    by: crackLook,
    heard: ['crack -slip -half-moon'],
    leads: { fine: { fault: 'roller-cracks' } },
  },
  examples: {
    finds: ['crescent shaped tears where cars brake', 'the patch wont stick to the old road, it slid'],
    not: ['hairline cracks right behind the roller', 'truck tires pick the tack up'],
  },
});
