/**
 * Head words and what people type for them. Cues and roles are written in head words; a question is read into them.
 * An alias of two or three words stands for its head where it is typed in one piece. Plurals, -ing and -ed need no entry.
 */
export const heads: Readonly<Record<string, readonly string[]>> = {
  'how-many': ['how many', 'how much', 'howmuch', 'howmany', 'hw many', 'how mutch', 'cuantos', 'cuantas', 'cuanto', 'cuanta', 'cuántas', 'cuántos', 'cuánta', 'cuánto', 'qty', 'quantity', 'number of', 'amount'],
  'how-far': ['how far', 'how many feet', 'how much road', 'how many ft', 'how long will', 'how much lane'],
  'how-fast': ['how fast', 'what speed', 'how slow'],
  ton: ['tons', 'tonnage', 'tonage', 'tonne', 'tonnes', 'tone', 'tonelada', 'toneladas'],
  gallon: ['gal', 'gals', 'gallons', 'galon', 'galones', 'galllon', 'galón'],
  mix: ['premix', 'pre-mix', 'premezcla', 'mezcla', 'blacktop', 'asphalt', 'asfalt', 'ashphalt', 'alsphalt', 'hotmix', 'coldmix', 'hma', 'material', 'tarmac', 'asfalto'],
  tack: ['tac', 'tackcoat', 'tack-coat', 'emulsion', 'emulstion', 'liga'],
  lift: ['lifft', 'layer', 'course', 'capa', 'capas'],
  load: ['loads', 'truckload', 'viaje', 'viajes', 'carga', 'cargas'],
  truck: ['trucks', 'camion', 'camiones', 'camión'],
  patch: ['pach', 'parche', 'parches', 'bacheo'],
  wide: ['widht', 'ancho', 'breadth', 'breath'],
  width: ['widths'],
  long: ['largo'],
  length: ['lenght'],
  deep: ['profundo', 'profundidad'],
  thick: ['espesor', 'grueso'],
  depth: ['depths'],
  order: ['ordering', 'buy', 'pedir'],
  roller: ['rooler', 'rodillo', 'aplanadora'],
  grader: ['gradder', 'motorgrader', 'maintainer', 'motoconformadora', 'motoniveladora'],
  blade: ['moldboard', 'mouldboard', 'cuchilla'],
  distributor: ['distributer', 'petrolizadora'],
  windrow: ['winrow', 'windro', 'row', 'berm', 'camellon', 'camellón'],
  flagger: ['flager', 'flaggers', 'flagman', 'flagmen', 'abanderado', 'banderero'],
  taper: ['tapper'],
  sign: ['señal', 'señales'],
  cone: ['barrel', 'drum-device', 'channelizer', 'candle', 'cono', 'conos', 'delineator', 'pylon', 'traffic cone'],
  merge: ['merging', 'convergencia'],
  multilane: ['four-lane', 'three-lane', 'five-lane', 'six-lane', 'multi-lane', 'multi lane'],
  'lane-drop': ['lane drop', 'lane ends', 'drop a lane', 'drops a lane', 'lose a lane', 'loses a lane'],
  'two-lane': ['two-laner', 'dos carriles'],
  alternate: ['alternating', 'take turns', 'one direction at a time'],
  urban: ['city', 'town', 'downtown', 'village', 'suburb', 'suburban', 'urbano', 'urbana', 'ciudad', 'pueblo'],
  rural: ['country road', 'out in the country', 'farm road', 'countryside'],
  residential: ['subdivision', 'neighborhood', 'neighbourhood'],
  expressway: ['freeway', 'interstate', 'divided highway', 'motorway', 'autopista'],
  unseen: ["can't see", 'cant see', 'cannot see', 'can not see', "couldn't see", "don't see", 'dont see', 'do not see', "won't see", 'out of sight', 'not visible', 'hidden'],
  vest: ['apparel', 'hi-vis', 'hivis', 'hi vis', 'high-vis', 'high-visibility', 'high visibility', 'chaleco'],
  spotter: ['ground guide', 'signaller', 'signaler', 'signalman'],
  queue: ['backed up', 'stack up', 'stacked up', 'stacking up', 'lined up', 'line of cars', 'line of traffic', 'traffic jam'],
  railroad: ['rail road', 'train tracks', 'train track', 'railroad tracks', 'railroad track', 'railroad crossing', 'rail crossing', 'rr crossing', 'grade crossing'],
  night: ['nite', 'after dark', 'nighttime', 'night-time', 'noche'],
  buffer: ['buffer space', 'buffer zone', 'bufer'],
  wheelpath: ['wheel path', 'wheel paths', 'wheel track', 'wheel tracks', 'wheelpaths'],
  'half-moon': ['half moon', 'half moons', 'crescent', 'crescents', 'horseshoe'],
  'stop-sign': ['stop sign', 'stop signs', 'stop light', 'stop lights', 'stop bar', 'stoplight'],
  'clean-up': ['cleanup', 'clean up', 'cleaned up', 'cleaning up', 'cleaned-up'],
  birdbath: ['bird bath', 'bird baths'],
  rut: ['rutting', 'rodera', 'roderas'],
  stone: ['rock', 'aggregate', 'aggragate', 'agregate', 'agregado', 'piedra'],
  'fine-graded': ['fine graded', 'fine mix', 'fine gradation'],
  'coarse-graded': ['coarse graded', 'coarse mix', 'coarse gradation'],
  coarse: [],
  'roll-down': ['rolldown', 'roll down'],
  max: ['maximum', 'máximo', 'maximo', 'most'],
  min: ['minimum', 'mínimo', 'minimo', 'least'],
  why: ['how come', 'what for', 'por que', 'por qué', 'reason'],
  need: ['necesito', 'needed', 'require', 'takes', 'take'],
  figure: ['calculate', 'compute', 'work out', 'calc'],
  check: ['can', 'may', 'ok', 'okay', 'allowed', 'allow', 'legal', 'alright', 'enough', 'acceptable', 'fine', 'too', 'puedo', 'should', 'good', 'right', 'safe', 'meets'],
};

/** Words that do not count between others. */
export const smallWords: readonly string[] =
  'a an the of is are am was were be been it its this that these those to i we you he they my our your me us do does did will would for with on by so then just got get have has had if and or as el la los las un una de del para con que es al en y'.split(
    ' ',
  );

/** Everyday words that must not be taken for a slip of a trade word. */
export const plainWords: readonly string[] =
  'about after again along around before behind below between could every first going house large later laid level light line little local looks loose lower might money never night noise north other place place plant please point price quick quite really round second seems seven shift short since small south space spend sport start state still store street table thank their there these thing think third those three today total touch under until usual water weather where which while white whole without woman women works world would write wrong years young'.split(
    ' ',
  );

/** Words that stand before figures of every kind, so that they tell little of the role. */
export const weakWords: readonly string[] = ['at', 'use', 'set', 'about'];
