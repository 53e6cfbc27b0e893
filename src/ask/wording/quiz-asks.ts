/** How people ask for a quiz, in cue lines (see `ask/cue.ts`). */
export const quizAsks: readonly string[] = [
  'quiz',
  'quiz ?question ?key',
  'zero question',
  'question #number -how-many -what -why -how -which',
  'question answer+key',
  'practice+question',
  'tailgate+question',
];

/** Words by which a topic of a quiz is named. */
export const topicWords: Readonly<Record<string, readonly string[]>> = {
  rolling: ['rolling', 'roller', 'rollers', 'roll', 'compaction', 'compacting'],
  tack: ['tack', 'emulsion', 'distributor', 'tacking', 'spraying'],
  mix: ['mix', 'premix', 'tons', 'tonnage', 'ordering', 'quantities', 'yield'],
  lifts: ['lifts', 'lift', 'layers', 'thickness'],
  blade: ['blade', 'grader', 'windrow', 'windrows', 'moldboard', 'blading', 'laying', 'row'],
  trucks: ['truck', 'trucks', 'hauling', 'haul', 'trucking', 'loads'],
  traffic: ['traffic', 'flagging', 'signs', 'tapers', 'taper', 'cones', 'zone', 'mot'],
  weather: ['weather', 'temperature', 'temperatures', 'cold', 'rain'],
  finish: ['finish', 'edges', 'edge', 'straightedge', 'smoothness', 'opening', 'drop-offs'],
  safety: ['safety', 'safe', 'danger', 'dangers'],
  hazards: ['hazards', 'hazard', 'drawing', 'drawings', 'spotting', 'picture', 'pictures'],
  steps: ['steps', 'order', 'procedure', 'sequence', 'process'],
  faults: ['faults', 'fault', 'defects', 'troubleshooting', 'trouble', 'problems', 'mistakes'],
  repairs: ['repairs', 'repair', 'distress', 'distresses', 'patching'],
};

/** Words by which a seat is named. */
export const seatWords: Readonly<Record<string, readonly string[]>> = {
  'new-hand': [
    'new hand',
    'new hands',
    'new man',
    'new men',
    'new guy',
    'new guys',
    'newcomer',
    'newcomers',
    'rookie',
    'rookies',
  ],
  flagger: ['flagger', 'flaggers', 'flag man', 'flagman', 'flagmen'],
  raker: ['raker', 'rakers', 'lute man', 'luteman', 'rake man'],
  roller: ['roller operator', 'roller operators', 'roller man', 'roller men', 'roller driver', 'roller drivers'],
  tack: ['tack man', 'tack men', 'tack crew', 'distributor operator', 'distributor driver'],
  truck: ['truck driver', 'truck drivers', 'truckers', 'trucker', 'truck man'],
  blade: [
    'blade man',
    'blade men',
    'blade operator',
    'blade operators',
    'grader operator',
    'grader operators',
    'bladehand',
  ],
  foreman: [
    'foreman',
    'foremen',
    'crew leader',
    'crew leaders',
    'crew chief',
    'supervisor',
    'supervisors',
    'lead hand',
  ],
};

export const levelWords: Readonly<Record<string, readonly string[]>> = {
  easy: ['easy', 'simple', 'beginner', 'beginners', 'basic'],
  medium: ['medium', 'middling', 'moderate', 'intermediate'],
  hard: ['hard', 'difficult', 'tough', 'advanced'],
};

/** Numbers of questions in words. */
export const countWords: ReadonlyMap<string, number> = new Map(
  Object.entries({
    no: 0,
    zero: 0,
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    dozen: 12,
    fifteen: 15,
    twenty: 20,
    'twenty-five': 25,
    thirty: 30,
    forty: 40,
    fifty: 50,
    hundred: 100,
  }),
);

/** Words that stand before what a quiz is on. */
export const onWords: readonly string[] = ['on', 'about', 'covering', 'regarding'];

/** Words that a topic is not named by, though they stand where one would. */
export const besideTopic: readonly string[] = [
  ...[
    'the',
    'a',
    'an',
    'and',
    'or',
    'with',
    'for',
    'in',
    'of',
    'on',
    'to',
    'all',
    'everything',
    'anything',
    'whole',
    'job',
    'work',
    'it',
  ],
  ...[
    'answer',
    'answers',
    'key',
    'keys',
    'please',
    'pls',
    'level',
    'crew',
    'my',
    'our',
    'us',
    'me',
    'them',
    'blade',
    'question',
    'questions',
  ],
  ...[
    'seed',
    'paper',
    'phone',
    'monday',
    'tuesday',
    'wednesday',
    'thursday',
    'friday',
    'morning',
    'tomorrow',
    'today',
    'quiz',
    'set',
  ],
];

/** Names a quiz on everything that there is. */
export const everythingWords: readonly string[] = ['everything', 'anything', 'all'];
