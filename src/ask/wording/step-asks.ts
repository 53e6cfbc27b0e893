/** How people ask about the order of the work, in cue lines (see `ask/cue.ts`). */
export const stepAsks = {
  whole: [
    'checklist',
    'check+list',
    'step patch|job|#length -next -last -first -skip -miss -missed -before -after -which -forget -forgot',
    'all|every+step',
    'step+step',
    'start+finish -lift -mix -when',
    'whole+procedure|process|job -long',
    'procedure patch|blade|job',
    'miss|missed|forget|forgot anything|something',
    'order step',
    'order operation',
    'sequence work|patch|job|operation',
    'what order do|go|work thing|this|it|job',
    'where start -roll -rolled -dump -sign -blade -cone -grader -roller -windrow -unload',
    'walk|talk|take|run+through job|process|whole|start',
    'full|complete+list',
    'list step',
    'how do whole|entire job',
    'what step patch|job|order',
  ],
  next: [
    'now+what',
    'what+now',
    "what|what's next -to",
    'next+step',
    'then+what',
    'what then -how -if',
    'what after that|this',
    '@after after that|this|it -#number -#length',
    '@after and+then',
    'what do+now',
    'what need now',
    'last+thing',
    'next+thing',
    'what start+with|on',
    'what start -how -roll -rolled -time',
    'what+left -over -truck -ton -load -mix -#rate -#number -residue',
    'anything|something+else',
    'what+else',
    'what do you+do',
    'what+do',
    'what up+next',
    'go|head|pack+home|up|out @check -overnight -sign -cone',
    'that+all|everything @check',
    'check+now+done|finished',
    'what left|remain before leave|go|home -truck -ton -load -mix',
    'what+first',
    'what do+first',
    'where go|from+here',
    'next -next+lift|patch|pass|load|truck|day|week|year|lane|sign|time|to|morning|spot',
  ],
  rest: [
    'what+left do|step|job|list|check -mix',
    'what else do|need|left',
    'step left|remain',
    'rest step|job|checklist',
  ],
  done: ['done -when -how -check -what', "that's+done", 'finished -when -how -check -patch -mat -surface', 'all+done'],
} as const;

/** Words that stand before or after the name of a step: each is put in place of NAME. */
export const stepFrames = {
  before: ['before NAME -day+before'],
  after: [
    'after NAME what|next|then|now -left -rest -remain -all -everything -list -#volume -#area',
    'what|next come|do after NAME',
  ],
  rest: ['left|remain|rest after NAME -#number -#rate -#volume', 'all|everything|list after NAME'],
  between: ['between NAME what|do|step|go|come|happen'],
  done: [
    'done|finished|complete|through NAME -not -before -when -how -walk+through -run+through -talk+through -take+through',
  ],
  skip: [
    'skip|without+NAME',
    'leave+out+NAME',
    'NAME need|necessary|optional|matter @check -before -after -again -more -another -#length -#mass -#volume -#rate -#number',
    'not|never|forget|forgot|missed+NAME @check -#length -#temperature',
    'need|must|have+NAME @check -between -lift -again -more -another -#length -#mass -#volume -#rate -#number',
  ],
  one: [
    'step|checklist|procedure|instruction NAME -next -what+step -before -after -left',
    'walk|run|talk|take+through NAME -what+now -next -before -after',
    'how NAME -many -far -fast -long -thick -deep -big -high -tall -wide -much -heavy -hot -cold -often -close -soon -why -keep -stop -prevent -fix -rid -know -tell -before -after -next -done -how-many',
  ],
} as const;

/** Which lift a word means, counted from the bottom. */
export const ordinals: ReadonlyMap<string, number> = new Map(
  Object.entries({
    first: 1,
    '1st': 1,
    bottom: 1,
    second: 2,
    '2nd': 2,
    third: 3,
    '3rd': 3,
    fourth: 4,
    '4th': 4,
    fifth: 5,
    '5th': 5,
    sixth: 6,
    '6th': 6,
    seventh: 7,
    '7th': 7,
    eighth: 8,
    '8th': 8,
  }),
);

/** Words for the last lift. */
export const lastWords: readonly string[] = ['finish', 'final', 'last', 'top', 'surface'];
