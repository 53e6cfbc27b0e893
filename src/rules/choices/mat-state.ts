import { choice, commonPractice } from '../shapes.ts';

export default choice({
  id: 'mat-state',
  title: 'state of the finished patch',
  because: 'What traffic meets must be rolled, cool, clean and marked.',
  sources: [commonPractice],
  question: {
    text: 'Is it rolled, cool, free of loose stone and open tack, its lips signed and its line shown?',
    ease: 1,
  },
  options: [
    {
      id: 'not-rolled',
      title: 'not rolled',
      cues: [
        'forget|skip|without|no|leave roll|rolled|roller traffic|car|open|through',
        'traffic|car pack|compact|roll it|in|down forget|skip|leave|no|not|without',
        'open|traffic|car|let not+rolled|roll',
        'open|traffic unrolled',
        'skip roll|rolled open|traffic',
        'open|traffic|let before roll|rolled',
        'not+rolled|roll traffic|car|open|through',
        'car|traffic want|let|on|through not+rolled',
      ],
    },
    {
      id: 'hot',
      title: 'still hot',
      cues: [
        'open|traffic|car|let hot|warm mat|mix|lift|patch -check+hot|warm',
        'open|traffic still+hot|warm|soft',
        'mat|mix|patch hot|smoking|warm open|traffic|car|let -check+hot|warm',
        'hot traffic|car|open -cold+mix -check+hot|warm',
      ],
    },
    {
      id: 'loose-stone',
      title: 'loose stone on it',
      cues: [
        'open|traffic|car|let loose+stone|gravel',
        'open|traffic|let stone loose|all+over',
        'loose stone open|traffic|lane|road',
      ],
    },
    {
      id: 'open-tack',
      title: 'tack not covered',
      cues: [
        'spray|tack|oil never|no|not|without mix|mat car|traffic|open|through|wave|drive -dump|spread+mix',
        'open|traffic|car|let tack bare|open|exposed|uncovered|wet',
        'traffic|car|drive on+tack',
        'car|traffic|let on tack',
        'bare|open|exposed+tack',
        'tack showing|bare|exposed open|traffic',
      ],
    },
    {
      id: 'lip',
      title: 'a lip without a sign',
      cues: [
        'open|traffic|let lip|step|bump|edge not|no|without sign',
        'open|traffic unsigned',
        'open|traffic lip -sign',
      ],
    },
    {
      id: 'no-line',
      title: 'line covered, no sign',
      cues: ['open|traffic|let no|without line|stripe|marking', 'cover center+line open|traffic'],
    },
    {
      id: 'ready',
      title: 'ready',
      cues: [
        'open|traffic rolled cool|cold',
        'rolled swept cool',
        'ready+open',
        'rolled cool|cold|cooled open|traffic|let|car -not',
        'cooled rolled',
        'swept rolled cooled|cool',
      ],
    },
  ],
});
