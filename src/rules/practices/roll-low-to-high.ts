import roadShape from '../choices/road-shape.ts';
import rollingDirection from '../choices/rolling-direction.ts';
import { practice } from '../shapes.ts';
import { navyBasic } from '../sources-craft.ts';

export default practice({
  id: 'roll-low-to-high',
  title: 'rolled from the low edge up',
  on: rollingDirection,
  because:
    'The low edge of the drum pushes the mix downhill; what is rolled already holds it. From the top down nothing does, and the mat creeps to the shoulder.',
  sources: [
    navyBasic('ch. 11, rolling techniques: edge to center on a crown, low side to high side on a banked curve'),
    {
      document: 'TM 5-1185, tandem roller, 5 to 8 ton',
      issuer: 'US Department of the Army',
      place: 'paras 31 to 34',
      seen: 'read',
    },
  ],
  cues: [
    'why start|begin roll',
    'why roll|rolled start|ditch|gutter|low|outside|centerline|center|yellow',
    'roll|rolled low|high|center|centerline|shoulder|crown|inside|outside|edge @check -#length -#number -sit',
    'roll|rolled start|first|from where|which',
    'roller|roll|rolled pass first shoulder|crown|low|high|edge',
    'pass roller|roll|rolled shoulder crown',
    'which+side|end|edge roll|rolled',
    'roller|roll first+pass where|which',
    'where start|begin roll|rolled|roller -#length',
    'roll|rolled edge middle',
    'roll|rolled which|what edge|side',
    'banked|curve roll|roller|rolled',
    'why roll|rolled low|shoulder|edge|up',
    'roll|rolled direction|order|pattern',
    'start|begin shoulder|crown|center|centerline|low|high|inside|outside work|toward|up|down -sign -cone -windrow -blade -grader',
    'crown|crowned start shoulder|center|edge -windrow -blade -grader',
    'start shoulder|crown|low|high @check -windrow -blade -grader -sign -cone',
    'low|high+side first',
    'roll|rolled low|high|shoulder|inside|outside first',
    'drum|roller start|begin|began yellow|center|centerline|crown|ditch|shoulder|low|high|inside|outside @check -hang -over -past',
    'drum|roller|roll|rolled start|began|begin|work down|toward|up ditch|shoulder|crown|center|centerline @check',
    'roll|rolled outside|inside begin|began|start',
    'start|begin|began yellow|centerline|crown -windrow -sign -cone',
    'roll|rolled ditch|gutter|curb side|edge',
    'start low|high|ditch|shoulder @check -windrow -blade -sign -cone',
  ],
  judged: {
    'low-to-high': { status: 'ok', text: 'From the low edge up is right.' },
    'shoulder-first': {
      status: 'ok',
      text: 'On a crowned road the shoulder is the low edge: from there up to the crown is right.',
    },
    'high-to-low': {
      status: 'caution',
      text: 'From the high edge down the mat creeps downhill, for nothing below holds it.',
    },
    'center-first': {
      status: 'caution',
      text: 'From the center line down to the shoulder is from the high edge down: the mat creeps to the shoulder.',
    },
    'inside-first': { status: 'ok', text: 'Right where the inside is the low edge.' },
    'outside-first': {
      status: 'caution',
      text: 'Right only where the outside is the low edge: look which side is low.',
    },
  },
  cases: [
    {
      when: [{ choice: roadShape, is: ['banked', 'curve'] }],
      judged: {
        'low-to-high': { status: 'ok', text: 'From the low edge up is right, even where that is the center line.' },
        'inside-first': {
          status: 'ok',
          text: 'On a banked curve the inside edge is the low one: from there up is right.',
        },
        'high-to-low': { status: 'caution', text: 'From the high edge down the mat creeps downhill.' },
        'outside-first': {
          status: 'caution',
          text: 'On a banked curve the outside edge is the high one: from there down the mat creeps to the inside.',
        },
        'shoulder-first': {
          status: 'caution',
          text: 'In a banked curve the shoulder of the outer lane is the high side: there the inside edge comes first.',
        },
        'center-first': {
          status: 'caution',
          text: 'In a banked curve the center line is the low edge of the outer lane but the high one of the inner: look which side is low.',
        },
      },
    },
  ],
  examples: [
    { facts: { 'rolling-direction': 'shoulder-first', 'road-shape': 'crowned' }, is: 'ok' },
    { facts: { 'rolling-direction': 'center-first', 'road-shape': 'crowned' }, is: 'caution' },
    { facts: { 'rolling-direction': 'shoulder-first', 'road-shape': 'banked' }, is: 'caution' },
    { facts: { 'rolling-direction': 'low-to-high', 'road-shape': 'banked' }, is: 'ok' },
    { facts: { 'road-shape': 'banked' }, is: 'cannot-tell' },
  ],
  cannotTell:
    'Low edge first: from the shoulder up on a crowned road, from the inside up on a banked curve. Tell me which edge is rolled first.',
  fix: 'Start at the low edge, out and back in one lane, then move up by a drum less the overlap.',
});
