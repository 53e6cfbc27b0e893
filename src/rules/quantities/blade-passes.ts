import { commonPractice, geometry, quantity } from '../shapes.ts';

export default quantity({
  id: 'blade-passes',
  title: 'strips to cover the width, one lift',
  dimension: 'count',
  units: { us: '1', metric: '1' },
  rounding: { us: 'up', metric: 'up' },
  counted: true,
  because: 'Each strip covers the effective width less the overlap; the first one gives up no overlap.',
  sources: [geometry, commonPractice],
  cues: [
    'how-many strip',
    'strip cover',
    'how-many blade|grader+pass -roller -roll',
    'blade+pass',
    'how-many pass cover -roller -roll -rolled -drum',
    'how-many pass need lift|width -roller -roll -rolled -drum -mix',
    'strip #length -roller -drum -roll -stone -first -test -each -down -ton -mix -gallon -tack -order -cost -how-far -wheelpath',
    'strip need|wide|width|lift -roller -drum -roll -ton -mix -gallon -tack -order -cost -how-far -wheelpath -stone',
  ],
  roles: { after: ['strip'], before: ['strip'] },
  bare: { us: '1', metric: '1' },
  asks: 'How many strips with the blade?',
  beside: ['blade-reach', 'least-passes'],
  usedAt: ['first-lift', 'next-lift', 'finish-lift'],
  note: 'Laying strips only; the passes that build and size the row come on top.',
  caution: 'No wheel, blade end or row over the line while the other lane carries traffic.',
});
