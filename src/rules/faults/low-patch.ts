import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { florida, ufcRepair } from '../sources-craft.ts';

export default fault({
  id: 'low-patch',
  title: 'low patch',
  seen: 'a patch that has gone down below the road soon after',
  because: 'Mix that the drum never reached packs later under wheels.',
  sources: [ufcRepair('ch. 7, p. 40: level lifts, overfilled'), florida('330-10.1: pneumatic rollers on patching')],
  cues: [
    'patch|mat settle|sink|sank|sunk|drop -pipe -culvert -bridge',
    'patch|mat low|lower|below road|soon|week|after|than|already -spot',
    'dip patch week|after|soon',
    'fill|patch rut|wheelpath|hole|spot low|lower|below|settle|sunk|sank|sink|down old|road|now|again|already|week|day -how -what',
    'roll|rolled flush now|then|week|day low|lower|below|settle|sunk|sank|sink|dip',
    'patch|mat gone|went+down',
    'center|middle|side low|dip|sunk|sank -line -blade -roller -drum -toe -roll -start -road -base',
    'rut back|again patch|fill|after|week',
    'patch|mat pack+down traffic|wheel|more',
    'patch|mat low now|already|after|again|than',
    'pack+down below|low|under',
    'settle low|below patch|mat|it -pipe -culvert -bridge -road',
  ],
  causes: [
    {
      text: 'a steel drum bridged the rut and left it loose below',
      remedy: 'fill ruts in level lifts, each rolled in the rut with rubber tires or a narrow drum',
      rule: 'drum-bridges-rut',
      source: florida('330-10.1: pneumatic rollers on patching'),
    },
    {
      text: 'no overfill for the roll-down',
      remedy: 'leave it slightly full[[: {lift-loose} loose]]',
      rule: 'flush-finish',
      source: ufcRepair('ch. 7, p. 40: level lifts, overfilled'),
    },
    {
      text: 'lifts too thick to be packed',
      remedy: 'thinner lifts, each rolled',
      rule: 'lift-max',
      source: commonPractice,
    },
    { text: 'the base is giving way', remedy: 'find out before you fill it again: dig it out', source: commonPractice },
  ],
  now: 'If the base is firm, sweep, tack, and bring it up with another level lift, rolled in the low.',
  nextTime: 'Roll in the rut first; leave the finish slightly full.',
  examples: {
    finds: ['patch settled below the road after a week', 'the ruts we filled are back already'],
    not: ['dip over the culvert pipe', 'water stands on the patch'],
  },
});
