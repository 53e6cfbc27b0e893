import { fault } from '../shapes-work.ts';
import { bladeSpreading } from '../sources-craft.ts';

export default fault({
  id: 'center-hump',
  title: 'hump in the middle',
  seen: 'a crown down the middle of the lane that should not be there',
  because: 'A row in the middle is spread both ways from where it lies, and the most stays where it lay.',
  sources: [bladeSpreading('the windrow is put to the side; from the center it leaves a hump')],
  cues: [
    'hump middle|center -key',
    'crown|crowned middle|center|lane|patch lane|patch|up|check -slope -drop -roll',
    'middle|center lane|patch|mat high|higher|hump|proud|bulge|up|thick',
    'high down+middle|center',
    'patch|mat rounded|hump|arched -end|begin|joint|start',
    'center|middle high|hump|proud -shoulder -roll -rolled -windrow',
  ],
  causes: [
    {
      text: 'spread from a row in the middle',
      remedy: 'put the row to the inside and carry it across',
      rule: 'windrow-side',
      source: bladeSpreading('the windrow is put to the side; from the center it leaves a hump'),
    },
  ],
  now: 'Warm: take the hump off with a light pass outward, then roll. Cold: cut it down before the next lift.',
  nextTime: 'Leave the last sizing pass with the row along the center-line side.',
  examples: {
    finds: ['middle of the lane is higher than both sides', 'the mat is rounded up down the middle'],
    not: ['tire tracks show through', 'mix humps up beside the rut in the old road'],
  },
});
