import { manual } from '../manual.ts';
import { choice } from '../shapes.ts';

export default choice({
  id: 'taper-kind',
  title: 'kind of taper',
  because:
    'A merging-length taper in front of flaggers invites passing at speed, and a flagger taper on a multilane road kills: the word alone never picks.',
  sources: [manual('Table 6B-3')],
  options: [
    {
      id: 'flagger',
      title: 'flagger (one-lane two-way) taper',
      cues: ['flagger -merge', 'one-lane taper -merge', 'two-lane -merge -shoulder', 'alternate'],
    },
    { id: 'downstream', title: 'downstream taper', cues: ['downstream taper'] },
    { id: 'shoulder', title: 'shoulder taper', cues: ['shoulder taper', 'shoulder close|closed|shut'] },
    { id: 'shifting', title: 'shifting taper', cues: ['shift taper'] },
    {
      id: 'merging',
      title: 'merging (lane-closure) taper',
      cues: [
        'merge',
        'multilane -shoulder',
        'lane-drop',
        'taper lane+close|closed|closure|shut -one-lane',
        'taper #length check @check -cone -device -shoulder -shift -downstream -flagger -two-lane -one-lane -alternate -county',
        'taper long+check -shoulder -shift -downstream -flagger -two-lane -one-lane -alternate',
      ],
    },
  ],
  question: { text: 'Which taper: does traffic merge into the next lane, or do flaggers alternate it?', ease: 1 },
});
