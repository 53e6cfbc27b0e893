import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { bladeSpreading } from '../sources-craft.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'thin-edge',
  title: 'thin edge',
  seen: 'an outer edge laid thin, that crumbles or breaks off',
  because:
    'Mix spread thinner than its own stones holds nothing together, and an edge without a shoulder has nothing to lean on.',
  sources: [commonPractice, bladeSpreading('uniform thickness, no thin spots')],
  cues: [
    'edge thin|thinner|skinny|starved',
    'edge of patch|mat crumble|break|broke|broken off -old -road',
    'patch|mat+edge crumble|break|broke|broken|ravel',
    'outside|outer|shoulder+side|edge not check|thin|mix -drop',
    'feather crumble|break|thin|ravel|peel',
    'thin|short mix edge|outside',
    'outside|outer thin|thinner|skinny',
    'hardly|barely|little|no+any|mix edge|outside|outer -left -traffic',
    'edge|outside|outer half|less|barely thick|thickness|deep -check -rut',
    'shoulder+side half|less|barely thick|thickness|deep -check -rut',
    'mat|patch|lift run|goes nothing edge|outside',
    'edge starved+out|thin',
    'starved+out',
  ],
  causes: [
    {
      text: 'mix let out before the finish, so that none was left for the edge',
      remedy: 'keep it short of the edge until the finish, then bring it all out',
      rule: 'material-run-out',
      source: commonPractice,
    },
    {
      text: 'feathered thinner than the stone',
      remedy: 'rake big stone out of the feather, or end it on a cut key',
      rule: 'lift-min',
      source: taught,
    },
    {
      text: 'a shoulder lower than the new edge',
      remedy: 'pull the shoulder up to it',
      rule: 'drop-off',
      source: taught,
    },
  ],
  now: 'Bring more mix out and roll it while the mat is warm; gone cold, cut it back to full thickness, tack the face, fill and roll. Pull the shoulder up.',
  nextTime: 'Cut a key along the edge where it will be thin; have the shoulder ready.',
  examples: {
    finds: ['outside edge came out too thin and crumbles', 'the feather on the shoulder side is peeling'],
    not: ['edge goes in and out all along', 'the patch is two inches higher than the old road at the end'],
  },
});
