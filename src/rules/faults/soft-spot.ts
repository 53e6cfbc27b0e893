import softPlace from '../choices/soft-place.ts';
import { fault } from '../shapes-work.ts';
import { bladeSpreading, ufcRepair } from '../sources-craft.ts';

export default fault({
  id: 'soft-spot',
  title: 'soft spot',
  seen: 'a place in the new patch that gives under a wheel or a boot',
  because: 'Either the mix has not dried and packed, or what is under it cannot carry it.',
  sources: [bladeSpreading('aeration of cold mix'), ufcRepair('3.2.2, pp. 8-9')],
  cues: [
    'soft+spot|place|area -base -locate -811',
    'spot|place|area sink|spring|spongy|bounce|give roller|drum|under|back -base -brake',
    'spring|bounce+back',
    'spongy|mushy|jello roller|drum|patch|mat|spot|place -base -under -underneath',
    'patch|mat|mix|spot soft|spongy|mushy|give -me -base -under -underneath -locate -811',
    'boot|heel|foot|knife sink|push|print patch|mat|mix|in',
    'patch|mat move|give under truck|wheel|foot|boot|car -roller -drum',
    "spot not|wont|won't set|firm|harden|pack|cure -tack",
    'dent patch|mat car|foot|boot|easy -roller',
  ],
  causes: [
    {
      text: 'wet or uncured cold mix',
      remedy: 'windrow it back, let it air and dry, lay and roll it again',
      source: bladeSpreading('aeration of cold mix'),
      when: { choice: softPlace, is: ['mix'] },
    },
    {
      text: 'a soft base under the patch',
      remedy: 'stop, dig it out, dry it, rebuild it in thin rolled layers, and find the water',
      source: ufcRepair('3.2.2, pp. 8-9'),
      when: { choice: softPlace, is: ['base'] },
    },
  ],
  now: 'Do not pile more on it. Find out which it is first: the mix is windrowed back, the base is dug out.',
  nextTime: 'Try every spot with a loaded truck before it is tacked.',
  apart: { by: softPlace, leads: { base: { defect: 'soft-base' } } },
  examples: {
    finds: ['one place in the patch is spongy', 'my boot sinks in the new mat'],
    not: ['mat shoves ahead of the roller', 'its mush underneath when we cut the top'],
  },
});
