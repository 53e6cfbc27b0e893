import chunkLook from '../choices/chunk-look.ts';
import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';

export default fault({
  id: 'chunks',
  title: 'chunks',
  seen: 'hard lumps in the mix or in the mat',
  because: 'A lump does not pack: the mix round it stays loose, and the lump works out.',
  sources: [commonPractice],
  cues: [
    'chunk -dig -haul -hauling -yard -ditch -throw -push -woods -waste -where -what -go -cut+out',
    'lump|clod|clump|ball mix|mat|patch|lift|windrow|hard|cold -left -edge -clean',
    'hard+lump|piece|spot mix|mat|windrow',
    'piece|chunk|bit old+road|pavement|mix|surface mix|mixed|mat|windrow|patch|new|fresh -crack',
    'lump|chunk|clod gray|grey|black|cold -left -edge -clean',
    'lumpy',
    'blade|grader cut|dig|gouge old+road|pavement|surface|mix',
    'fist size',
    'lump come|coming|show|turn|keep -left -edge',
    'chunk under|in|up',
    'clump|clod',
    'piece mixed',
    'ball cold+mix',
    'hard+piece|bit blade|mix|mat',
  ],
  causes: [
    {
      text: 'cold crusted mix, from the truck, the edge of the tarp, or an old pile',
      remedy: 'pull the lumps out, never roll them in; tarp the loads, dig the pile past its crust',
      source: commonPractice,
      when: { choice: chunkLook, is: ['black'] },
    },
    {
      text: 'the blade cutting the old surface',
      remedy: 'less pressure, less angle',
      source: commonPractice,
      when: { choice: chunkLook, is: ['gray'] },
    },
  ],
  now: 'Pull them out by hand with the machines stopped, fill the holes with good mix, roll. Haul the lumps.',
  nextTime: 'Black lumps: tarps on, crust left on the pile. Gray ones: ease the blade while sizing.',
  apart: { by: chunkLook },
  examples: {
    finds: [
      'hard cold lumps the size of a fist in the mix',
      'clods in the windrow',
      'blade is digging pieces out of the old road',
    ],
    not: ['where do we haul what we cut out', 'stones kicking out of the mat'],
  },
});
