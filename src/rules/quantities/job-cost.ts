import { commonPractice, quantity } from '../shapes.ts';

export default quantity({
  id: 'job-cost',
  title: 'cost of the job',
  dimension: 'money',
  units: { us: 'USD', metric: 'USD' },
  rounding: { us: 'whole', metric: 'whole' },
  because: 'Mix, labor, equipment and tack: traffic control is in the crew and the machines.',
  sources: [commonPractice],
  cues: ['cost job|patch|total|all', 'what cost', 'how-many cost', 'total+cost', 'cost -ton+cost'],
  roles: { after: ['job', 'total'], before: ['cost', 'job', 'total', 'spent'] },
  setting: ['cost', 'job', 'total', 'spent'],
  bare: { us: 'USD', metric: 'USD' },
  asks: 'What does the job cost?',
  beside: ['cost-per-ton', 'material-cost', 'labor-cost', 'equipment-cost'],
  usedAt: ['record'],
  caution: 'Your prices; nothing is assumed.',
});
