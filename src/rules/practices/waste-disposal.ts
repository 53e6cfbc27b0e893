import wastePlace from '../choices/waste-place.ts';
import { commonPractice, practice } from '../shapes.ts';

export default practice({
  id: 'waste-disposal',
  title: 'chunks and sweepings are hauled',
  on: wastePlace,
  because: 'Chunks plug ditches and fly from mowers; tacky sweepings foul water.',
  sources: [commonPractice],
  cues: [
    'waste|chunk|sweeping|trimming|spoil|millings|cut where|ditch|drain|dump|haul|put|roadside @check',
    'where waste|chunk|sweeping|trimming|millings|spoil',
    'ditch chunk|waste|sweeping|mix|tack',
    'in+ditch',
    'dispose|disposal',
    'left+over mix ditch',
    'chunk|busted|old+mix push|shove|kick|throw|toss|blade ditch|side|shoulder|woods',
    'push|shove|kick|throw|toss|roll chunk|mix|waste in|into|over+ditch|bank|side @check',
    'ditch chunk|piece|broken|busted @check',
    'chunk|busted|broken|old|waste|sweeping|millings haul|yard|woods|bank|creek|drain|ditch|field @check -tack -spray|shoot -residual',
    'dump|throw|push|toss old|chunk|waste|broken|busted|sweeping|millings woods|bank|creek|drain|ditch|field',
    'storm+drain',
    'dump|throw old|broken+mix',
  ],
  judged: {
    hauled: { status: 'ok', text: 'Hauled off, to where the agency lets it lie.' },
    roadside: { status: 'caution', text: 'Only clean, fine material, and only where the agency allows it.' },
    ditch: { status: 'caution', text: 'Nothing goes into a ditch, drain, wetland or yard.' },
  },
  cannotTell: 'Chunks and tacked sweepings are hauled; nothing goes into a ditch, drain, wetland or yard.',
  fix: 'Load it out; get what lies in a ditch or drain back out, and tell the supervisor.',
});
