import { commonPractice } from '../shapes.ts';
import { fault } from '../shapes-work.ts';
import { taught } from '../sources-work.ts';

export default fault({
  id: 'cold-load',
  title: 'cold load',
  seen: 'a hot load that comes in cold, stiff or crusted',
  because:
    'A thin lift has little heat to begin with; a load that has lost its own cannot be packed in the minutes left.',
  sources: [taught, commonPractice],
  cues: [
    'load|truck|mix came|come+in+at #number',
    'load|truck|mix come|came|coming|arrive+in|at #temperature',
    'load|truck|mix come|came|arrive cold|cool|stiff|crust|hard -cold+mix',
    'load #temperature check|refuse|reject|need|send|back',
    'cold|stiff|crust+load|truck -cold+mix',
    'load|truck|mix show|showed|arrive cold|cool|stiff|crust|hard -cold+mix',
    "mix|load stiff won't|wont|not spread|move|roll|lay -cold+mix",
    'hot+mix stiff',
    'load crust|crusty|stiff|lump',
    "mix|load not|isn't|ain't hot",
    'mix lost heat',
    'mix|load cool|cooled|cold|stiff before|got|went finish|finished|done|laid|roll|rolled|spread',
    'load sat|wait long|hour|cold',
    'steam no|not load|mix',
    'mix was|at #number|#temperature got|when|here',
    'truck|load cold|crust|stiff show|showed|came|up',
    'load cold -cold+mix',
    'mix|load not spread|roll stiff|cold',
  ],
  causes: [
    {
      text: 'a long haul or a wait, with no tarp',
      remedy: 'tarp every load, call for trucks as they are needed',
      source: commonPractice,
    },
    {
      text: 'sent out cool from the plant',
      remedy: 'read the ticket; many specifications want 225 to 250 degrees F in the truck: your own figure wins',
      source: taught,
    },
    {
      text: 'cold air, wind or a wet bed',
      remedy: 'no thin hot lifts on such a day',
      rule: 'air-temperature',
      source: commonPractice,
    },
  ],
  now: 'For a thin hot lift it is lost: refuse it, or ask the inspector. Never bury crust and lumps in the mat.',
  nextTime: 'Take the heat of every load before the bed goes up, and again behind the blade.',
  caution: 'Thermometer from beside the bed, never from a step or under the tailgate.',
  examples: {
    finds: [
      'load came in at 210',
      'the truck came in cold and stiff',
      'last load sat an hour and there is crust on it',
      'load came in at 210 degrees',
    ],
    not: ['cold mix shoves under the roller', 'can we patch at 45 degrees'],
  },
});
