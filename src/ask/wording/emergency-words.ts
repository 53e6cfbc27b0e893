/** What people type for a head word, parted by |. */
type Aliases = Readonly<Record<string, string>>;

const listed = (aliases: Aliases): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(Object.entries(aliases).map(([head, words]) => [head, words.split('|')]));

const words = (text: string): readonly string[] => text.split(' ');

/** Common given names: nobody writes that the truck backed over the laborer. */
const givenNames =
  'mike|joe|bob|dave|kevin|steve|jim|tom|john|dan|jeff|brian|scott|jason|eric|greg|kyle|tyler|josh|matt|chris|nick|tony|ben|sam|alex|ryan|adam|justin|travis|cody|brandon|dustin|derek|jesse|carl|gary|larry|jerry|terry|randy|ricky|danny|billy|bobby|jimmy|johnny|tommy|eddie|freddy|frank|fred|george|paul|peter|phil|ralph|roy|russ|ron|todd|tim|troy|vince|walt|wayne|zack|luke|jake|josé|jose|juan|luis|carlos|miguel|pedro|jorge|manuel|jesús|jesus|francisco|antonio|roberto|ricardo|javier|raul|rafael|hector|oscar|sergio|diego|pablo|alberto|fernando|eduardo|maria|sarah|lisa|amy|jenny|kelly|karen|linda|susan|willie|bubba|junior|hank|chuck|charlie|rick|robert|james|william|david|michael|thomas|daniel|anthony|andrew|joshua|kenneth|kenny|ken|ronald|ronnie|donnie|wes|clint|cole|chad|brad|brett|bruce|craig|darrell|darryl|dale|dean|doug|earl|glenn|harold|harry|howard|ivan|jared|jimbo|leo|leon|lou|marcus|marty|mitch|neil|norm|otis|patrick|sean|shawn|shane|stan|stu|ted|trevor|tyrone|vern|victor|wyatt|alejandro|andres|arturo|cesar|enrique|felipe|ramon|ruben|salvador|mario|marcos|ana|rosa|jessica|ashley|megan|emily|becky|tina|tammy|debbie|donna|nancy|barb';

/**
 * Head words of emergencies. They stand apart from the words of the trade: there a hand is a man or a tool and bleeding is
 * a fault of the mat, here both are of a body.
 */
export const emergencyHeads = listed({
  person:
    "one of my crew|one of the crew|one of our crew|one of my people|one of our people|dump man|roller man|shovel man|rake man|lute man|tack man|broom man|blade man|grader man|truck man|sign man|traffic control tech|traffic control technician|guy|guys|man|men|dude|fella|fellow|pal|partner|helper|teammate|colleague|employee|apprentice|rookie|newbie|new hire|new hand|crew member|crewmember|team member|shoveler|shovel hand|dumpman|groundsman|hauler|trucker|tech|technician|surveyor|engineer|supervisor|superintendent|super|trooper|cop|deputy|officer|resident|neighbor|bystander|jogger|runner|bicyclist|motorcyclist|son|brother|dad|uncle|cousin|grandpa|old timer|worker|laborer|labourer|raker|operator|driver|kid|buddy|coworker|woman|lady|flagger|flagman|flaggers|foreman|boss|inspector|pedestrian|walker|cyclist|biker|child|boy|girl|somebody|someone|him|her|he|hes|he's|she|shes|she's|me|myself|im|i'm|mechanic|spotter|crewman|hombre|trabajador|banderero|muchacho|compañero|" +
    givenNames,
  body: 'arm|arms|forearm|forearms|calf|palm|lip|lips|cheek|leg|legs|hand|hands|foot|feet|finger|fingers|skin|face|head|chest|neck|ankle|ankles|knee|knees|wrist|elbow|hip|ribs|rib|nose|thumb|shin|thigh|boot|boots|ear|mouth|stomach|shoulderblade|brazo|pierna|mano|pie|cara|piel',
  eye: 'eyes|eyeball|ojo|ojos',
  blister: 'blisters|blistered|blistering',
  burn: 'burnt|burns|scald|scalded|scalding',
  quemado: 'quemo|quemó|quemada|quemadura|quemaron',
  liquid: 'tack|oil|emulsion|cutback|diesel|fuel|gasoline|binder|hydraulic fluid|antifreeze|emulsión',
  'hot-mix': 'mix|asphalt|blacktop|premix|hotmix|asfalto|mezcla|tar|binder',
  splash: 'splashed|sprayed|spray|squirt|squirted|spilled|poured|shot',
  hit: 'struck|hits|clipped|rammed|smacked|nailed|plowed into|golpeó|golpeo',
  'run-over': 'run over|ran over|runned over|backed over|back over|drove over|drive over|rolled onto',
  'ran-him-over': 'ran him over|ran her over|run him over|run her over|ran a guy over|ran me over',
  atropellado: 'atropelló|atropello|atropellaron',
  pinned: 'trapped|squashed',
  crushed: 'crush',
  machine:
    'roller|grader|loader|distributor|tractor|dozer|backhoe|skidsteer|kettle|mill|broom|paver|excavator|compactor|machine|machines|aplanadora|rodillo|motoconformadora|equipo',
  snake: 'snakes|rattlesnake|rattlesnakes|rattler|copperhead|cottonmouth|moccasin|víbora|vibora|culebra|serpiente',
  queue:
    'line of cars|lines of cars|stopped cars|stopped traffic|backup|back of the line|end of the line|back of the queue|end of the queue|waiting cars',
  zapped: 'got a shock|got shocked|electric shock',
  bee: 'bees|wasp|wasps|hornet|hornets|yellow jacket|yellow jackets|yellowjacket|yellowjackets|avispa|abeja',
  truck: 'trucks|camion|camión|dumptruck',
  vehicle: 'car|cars|pickup|semi|van|suv|motorcycle|motorist|vehicle|bus|trailer|rig|carro|coche|camioneta',
  'upside-down': 'upside down',
  volcado: 'volcó|volco|volteó|volteo|volcadura',
  wire: 'wires|power line|power lines|powerline|powerlines|overhead line|overhead lines|overhead wire|overhead wires|lines overhead|electric line|electric wire|high line|power pole|power wire|power wires|electric wires|light wire|light wires|utility wire|utility wires|utility line',
  'gas-line': 'gas line|gas lines|gas main|gas pipe|gas service|gas lateral|gasline|natural gas',
  'gas-leak':
    'gas leak|leaking gas|fuga de gas|smell gas|smells gas|smells like gas|smelling gas|gas smell|rotten eggs|rotten egg|gas hissing|gas is hissing',
  'power-cable':
    'electric cable|power cable|buried cable|buried electric|buried electric cable|buried power|underground cable|underground electric',
  incendio: 'incendia|incendió|fuego|llamas',
  flames: 'flame|in flames',
  'heat-stroke': 'heat stroke|heatstroke|heat exhaustion|sun stroke|sunstroke|insolación|insolacion|golpe de calor',
  'pass-out': 'passed out|passing out|fainted|faint|blacked out|keeled over|desmayó|desmayo|desmayado',
  vomit: 'throwing up|threw up|puking|vomiting|throw up',
  unconscious: 'unresponsive|knocked out|not responding|inconsciente',
  'no-breath':
    "not breathing|isn't breathing|isnt breathing|aint breathing|ain't breathing|stopped breathing|quit breathing|cant breathe|can't breathe|cannot breathe|no pulse|no respira",
  'heart-attack': 'heart attack|chest pain|chest pains|cardiac arrest|infarto',
  seizure: 'convulsion|convulsing|having a stroke|had a stroke|having a fit',
  hurt: 'injured|herido|lastimado',
  sting: 'stung|stings|picadura|picó',
  bite: 'bit|bitten',
  allergic: 'allergic reaction|anaphylaxis|anaphylactic|epipen|epi pen',
  water: 'creek|river|stream|pond|lake|canal|wetland|bay|arroyo|río',
  drain: 'ditch|inlet|sewer|storm drain|stormdrain|drains|culvert|gutter|catch basin|alcantarilla|cuneta',
  leak: 'leaking|leaks|spill|spilled|spilling|spilt|washed|washing|drained|draining|flowing|pouring|heading|derrame',
  crash: 'crashed|wreck|wrecked|collision|collided|rear ended|rear-ended|choque|chocó|accident|accidente|fender bender',
  zone: 'work zone|workzone|closure|cone|cones|barrel|barrels|taper|barricade|barricades|closed lane|work area|buffer',
  'wont-stop':
    "wont stop|won't stop|will not stop|not stopping|didn't stop|didnt stop|refuses to stop|ran the paddle|ran the stop|blew past|blew by",
  went: 'going|goes|came|ran|run|running',
  drove: 'drives|plowed|barreled|flew|careened',
  threaten:
    'threatening|threatened|attacking|attacked|assaulting|assaulted|punched|shoved|swinging at|spitting on|amenaza',
  weapon: 'gun|pistol|rifle|knife|machete|bat',
  through: 'thru',
  angry: 'cussing|cursing|screaming|yelling|raging|mad|pissed|enojado',
  again:
    'back over it|back over them|back over that|back over the|goes back over|go back over|going back over|went back over',
  ambulance: 'medic|medics|paramedic|paramedics|ambulancia|911',
});

/** Words that are one letter from a head and mean another thing. */
export const emergencyPlain = words(
  'quedo quedó queda quedan quedaron swing swings swung string strings drum drums worked drawn burner burners trash stick sticks spring shirt stuck rolled tipped caught between under over down off into toward side behind broke broken collapse collapsed dizzy confused crazy sweating swelling swell throat closing patch mat road joint lift surface pavement fell fall from through fire smoke spark sparking touch touched snag snagged cut nick nicked bee wasp snake hot stuff heat sheen upside engine tank hose bed boom across hiss hissing need call send lost stroke shock electrocuted drunk gets out getting lunch light water board brush flash place stone bring story train trailer start blew turned dropped landed slammed having doing got',
);

/** Before the cue, or in an earlier part of the same sentence, they make it a supposition. */
export const supposing = words(
  'if suppose supposing when whenever unless in-case what-happens might keep-from prevent avoid protect legal law osha reportable liable insurance kit si cuando',
);

/** Phrases read as one word, for the lists here. */
export const doubtHeads = listed({
  'in-case': 'in case|incase',
  'what-happens': 'what happens|what if|what would happen',
  'what-do':
    'what do i do|what do we do|what should i do|what should we do|what to do|what can i do|what do i need to do|que hago|qué hago|que hacemos|qué hacemos',
  'keep-from': 'keep from|keep people from|keep my guys from|keep the crew from|so nobody|so nobody gets|so no one',
  'long-past': 'yesterday|ago|last week|last month|last year|last summer|last winter|last night|last time|used to|ayer',
  'not-so':
    "almost|nearly|nobody|no one|noone|never|nobodys|casi|nadie|no injuries|not hurt|no fire|no fires|no smoke|wasnt hurt|wasn't hurt",
  'told-of':
    'near miss|near-miss|close call|quiz|training|tailgate talk|toolbox talk|safety talk|safety meeting|poster|drill',
});

/** A part that opens with one of these asks something; it tells of nothing, unless somebody known is in it. */
export const asking = words(
  'is are was were do does did can could should would may must who whose how which why where what when will shall has have puedo puede cómo como quién quien',
);

/** A part that ends with one of these asks leave for something; it tells of nothing. */
export const askingLeave = words('ok okay alright allowed fine legal');

/** Somebody known is in it: "do i move him". */
export const somebodyKnown = words("he him she her his he's she's hes shes");

/** Words that do not count between others. */
export const emergencySmall = words(
  'a an the our my his their its it some this that these those just really very un una el la los las su mi de del',
);
