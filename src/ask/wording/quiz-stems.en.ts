/**
 * Stems of the problems in figures, by problem; `{patch-length}` stands for a figure of the stem with its unit,
 * `[tons|tonnes]` for the word of US or metric sets.
 */
export const problemStems: Readonly<Record<string, string>> = {
  area: 'A patch is {patch-length} long and {patch-width} wide. What is its area in square [yards|meters]?',
  'spread-rate':
    'The mix weighs {unit-weight}. The patch is {patch-depth} thick, rolled. How many [pounds|kilograms] lie on each square [yard|meter]?',
  tons: 'A patch is {patch-length} long, {patch-width} wide and {patch-depth} deep on average, rolled. The mix weighs {unit-weight}. How many [tons|tonnes] go in?',
  'tons-of-area':
    'A patch of {patch-area} is {patch-depth} deep on average, rolled. The mix weighs {unit-weight}. How many [tons|tonnes] go in?',
  order:
    '{premix-mass} go in the patch, and nothing is dumped past its ends. You add {waste} for waste. How many [tons|tonnes] do you order?',
  'yield-check':
    '{placed-mass} went down on {patch-area}. The mix weighs {unit-weight}, rolled. How thick is the patch on average?',
  'tons-left':
    'The patch needs {premix-mass}. {loads-placed} loads of {truck-payload} each are down. How many more [tons|tonnes] are needed?',
  'load-length':
    'A truck carries {truck-payload}. The patch is {patch-width} wide and {patch-depth} deep, and the mix weighs {unit-weight}. How many [feet|meters] of patch does one load cover?',
  loads: 'The patch takes {premix-mass}, and a truck carries {truck-payload}. How many loads is that?',
  'legal-load':
    'A bridge is posted for {posted-weight}, the whole truck. Empty, your truck weighs {truck-tare}. How much mix may it carry over?',
  'lift-count':
    'The deepest spot is {deepest-depth}, the average {patch-depth}. A lift is at most {lift-max}, rolled. How many lifts does the deepest spot need?',
  'loose-depth':
    'A lift is to be {lift-thickness} after rolling, and the roll-down factor is {roll-down}. How thick do you leave it behind the blade?',
  'thinnest-lift':
    'The largest stone in a cold mix is {stone-size}. What is the thinnest lift a blade can lay with it, rolled?',
  'tons-a-lift':
    'A square-cut patch takes {premix-mass} in {lift-count} equal lifts. How many [tons|tonnes] go in each lift?',
  'row-section':
    'One lift is {patch-width} wide and {lift-thickness} thick after rolling. The roll-down factor is {roll-down}. How many square [feet|meters] is the end of the row?',
  'row-tons':
    'One lift is {patch-width} wide and {lift-thickness} thick, rolled. The mix weighs {unit-weight}. How many [tons|tonnes] must lie in 100 ft of row?',
  strips:
    'The blade covers {blade-reach} at its angle, and strips overlap by {blade-overlap}. How many strips does a width of {patch-width} take?',
  'passes-for-all-lifts':
    'One lift takes {blade-passes} strips of the blade. How many laying passes does a patch of {lift-count} lifts take?',
  'blade-time':
    'The grader makes {grader-passes} passes of {work-distance} at {grader-speed}, and moves {grader-efficiency} of the time. How many minutes does it take?',
  'roller-lanes':
    'A drum is {drum-width} wide. Strips overlap by {roller-overlap}, and the drum goes {roller-overhang} past each edge. How many strips does a width of {patch-width} take?',
  'roller-trips':
    'The width takes {roller-lanes} strips of the drum, and all of it is rolled {roller-coverages} times. How many trips is that for one lift?',
  'rolling-time':
    'One lift takes {roller-passes} trips of the roller over {patch-length}. It goes {roller-speed} and rolls {roller-efficiency} of the time. How many minutes does that take?',
  'rolling-all-lifts':
    'Rolling one lift takes {rolling-time}. How long does the rolling of all {lift-count} lifts take?',
  'roll-one-load':
    'One load covers {load-length}, and a lift takes {roller-passes} trips. The roller goes {roller-speed} and rolls {roller-efficiency} of the time. How long does it take to roll one load?',
  'half-drum': 'A drum is {drum-width} wide. The widest overlap worth rolling is half a drum. How wide is that?',
  'crown-drop':
    'A lane is {patch-width} wide and falls {cross-slope} across. How much lower is its outer edge than the center line?',
  'drop-after':
    'The shoulder is {edge-drop} below the old edge. The patch adds {edge-thickness} at the edge. How deep is the drop-off after laying?',
  'truck-headway': 'A round trip takes {cycle-time}, and {trucks-on-job} trucks haul. How often does a truck come?',
  'round-trip':
    'Loading takes {load-time}. The haul is {haul-distance}, at {haul-speed} loaded and {return-speed} empty. The truck waits {wait-time} and dumps in {unload-time}. How long is its round trip?',
  'trucks-to-keep-up':
    'A round trip takes {cycle-time}, and one load lasts the blade {lay-time}. How many trucks keep the blade going?',
  'load-lasts': 'A truck brings {truck-payload}, and the crew lays {laying-rate}. How long does one load last?',
  'tack-of-area': 'You spray {tack-area} at {tack-rate}, one coat. How many [gallons|liters] is that?',
  'tack-gallons':
    'A patch is {patch-length} long and {patch-width} wide. You spray one coat at {tack-rate}. How many [gallons|liters] is that?',
  'sprayed-rate':
    'The residual is to be {tack-residual}. The emulsion is {residue} asphalt and not diluted. What rate do you spray?',
  'sprayed-rate-diluted':
    'The residual is to be {tack-residual}. The emulsion is {residue} asphalt, and the tank is half water, half emulsion. What rate do you spray?',
  'what-stays':
    'You spray {tack-rate}. The emulsion is {residue} asphalt, and the tank holds {dilution} emulsion. How much asphalt stays on the road?',
  'water-in-tank':
    'A tank holds {tack-volume} of diluted emulsion; {dilution} of it is emulsion as delivered. How many [gallons|liters] of it are water?',
  'tank-run':
    'The tank holds {tank-volume}. You spray {tack-rate}, {spray-width} wide. How many [feet|meters] of road does it cover?',
  'distributor-speed':
    'The pump gives {pump-rate}. You spray {tack-rate}, {spray-width} wide. How many [feet|meters] a minute does the truck go?',
  'tack-used': 'You sprayed {tack-used} on {tack-area}, one coat. What rate was that?',
  'merging-taper-fast':
    'Cars go {posted-speed}, and {offset} of a multilane road is closed. How long should the merging taper be?',
  'merging-taper-slow':
    'Cars go {posted-speed}, and {offset} of a multilane road is closed. How long should the merging taper be?',
  'shifting-taper': 'For this road a merging taper is {merging-taper}. How long should a shifting taper be?',
  'shoulder-taper': 'For this road a merging taper is {merging-taper}. How long should a shoulder taper be?',
  'cone-spacing': 'Traffic goes {posted-speed}. Along the work, at most how far apart should the cones stand?',
  'cones-on-taper': 'A taper is {taper-length} long, with a cone every {device-spacing}. How many cones stand on it?',
  queue:
    'Traffic is held for {stop-time}. {traffic-volume} cars an hour come that way, and each takes {queue-room}. How long does the queue get?',
  'warning-reach':
    'Three signs stand {sign-spacing-a} apart, the nearest {sign-spacing-a} from the flagger. How far out is the farthest one?',
};

/** Stems of yes-or-no items on limits, by rule, to stand before the question of `quiz.en.ts`. */
export const limitStems: Readonly<Record<string, string>> = {
  'roller-speed': 'A steel roller is going {roller-speed}.',
  'lay-speed': 'The grader lays mix at {grader-speed}.',
  'lift-max': 'A lift is {lift-thickness} thick after rolling.',
  'lift-min': 'The largest stone is {stone-size}, and the lift is {lift-thickness} thick after rolling.',
  'roller-overlap': 'The drum is {drum-width} wide, and its strips overlap by {roller-overlap}.',
  'roller-keeps-up': 'Hot mix: rolling one load takes {load-rolling-time}, and it stays hot enough for {time-to-roll}.',
  'tack-rate': 'The surface is worn, and {tack-residual} of asphalt is left on it.',
  'air-temperature': 'The air is {air-temperature} and steady.',
  'surface-temperature': 'A thin hot lift is to go on a road of {surface-temperature}.',
  'flush-finish': 'The edge of the patch stands {flush-height} above the old road.',
  straightedge: 'Across the road the gap under the straightedge is {straightedge-gap}.',
  'end-spread': 'Mix is dumped {end-spread} past the tack at each end.',
  'turnout-distance': 'The blade is empty {turnout} past the end of the patch.',
  'drop-off': 'The shoulder is {edge-drop} below the edge of the road, with no sign.',
  'drop-off-after': 'After laying the shoulder is {edge-drop-after} below the edge, with no sign.',
  payload: 'The truck may carry {legal-payload} by law. It is loaded with {truck-payload}.',
  'placed-before-finish': '{placed-share} of the mix is down before the finish lift of {lift-count} lifts.',
  'dilution-once': 'The tank holds {dilution} emulsion as delivered; the rest is water.',
  'static-thin-lift': 'A lift is {lift-thickness} thick after rolling, and the drum is vibrating.',
  'open-lane': 'The open lane is {open-lane-width} wide.',
  'queue-room': 'The queue is {queue-length} long. The farthest sign is {advance-length} out.',
  'sign-spacing': 'On a rural road a sign stands {sign-distance} from the next.',
  'hot-section': 'By the estimate {hot-section-length} can be rolled hot. {laid-ahead} lie ahead of the roller.',
  'buffer-length': 'Traffic goes {posted-speed} on the level. The buffer is {buffer-found} long.',
  'flagger-sight': 'Traffic goes {posted-speed} on the level. Drivers see the flagger from {flagger-sight}.',
  'device-spacing': 'Traffic goes {posted-speed}. On the merging taper the cones stand {device-spacing} apart.',
  'taper-length': 'Traffic goes {posted-speed}, and {offset} is closed. The merging taper is {taper-length} long.',
  'speed-drop': 'For the work the speed limit is lowered by {speed-drop}.',
  'full-closure': 'By day a flagger closes the road both ways for {closure-time}.',
  'open-cool': 'The mat is {mat-temperature}, and traffic is to go on it.',
  'impacts-per-foot': 'The drum strikes {impacts-per-foot} times in each foot.',
  'cone-height': 'By day, on a slow road, the cones are {cone-height} tall.',
  'sign-height': 'A sign on a post in the country stands {sign-height} above the road, measured to its bottom.',
  'overnight-ramp': 'For the night the end is ramped {end-taper-ratio} of thickness.',
};

/** Sentences for a way of doing something, by rule: for yes-or-no items, and as options of what is unsafe. */
export const practiceStems: Readonly<Record<string, string>> = {
  'temperature-trend': 'You are about to lay, and the temperature is {temperature-trend}.',
  'tack-set': 'Mix is about to go on tack that is {tack-state}.',
  'tack-clean-dry': 'Tack is about to go down. On the road: {surface-state}.',
  'drum-bridges-rut': 'The mix in a rut is rolled {rut-rolling}.',
  overnight: 'For the night the patch is left like this: {overnight-state}.',
  'roll-each-lift': 'The patch has two lifts: {lift-rolling}.',
  'windrow-side': 'The first lift begins, and the row lies here: {windrow-place}.',
  'material-run-out': 'The mix at the end of the row: {row-end}.',
  'waste-disposal': 'Chunks and sweepings of the job: {waste-place}.',
  'open-to-traffic': 'Traffic is about to be let on the patch. Its state: {mat-state}.',
  'roller-belt': 'The roller moves with its seat belt {seat-belt}.',
  'roller-edge': 'The roller works along an edge that is {edge-support}.',
  'no-rain': 'Tack is about to go down. The weather: {weather-state}.',
  'backing-spotter': 'A truck comes to the blade: {backing}.',
  'buffer-empty': 'The buffer before the crew has {buffer-use}.',
  'flagger-station': 'The flagger stands {flagger-place}.',
  'flagger-count': 'One lane carries both ways: {flaggers-posted}.',
  'machine-inside-lane': 'A wheel, blade end, drum or row is {lane-edge}.',
  'advance-sign': 'A flagger is at work. Advance warning signs: {advance-signs}.',
  apparel: 'High-visibility apparel in the work zone: {apparel}.',
  'night-lighting': 'Work goes on at the flagger station, {night-station}.',
  'poor-visibility': 'The crew is laying. What drivers have before them: {visibility}.',
  'queue-end': 'The queue stands {queue-place}.',
  'signs-true': 'Nobody is at work. The signs are {signs-idle}.',
  'traffic-control-first': 'A man is on the road to measure. Traffic control: {traffic-control-state}.',
  'traffic-control-last': 'Taking traffic control down: {control-removal}.',
  'no-water-in-cutback': 'The tank holds cutback. Water in it: {tank-water}.',
  'arrow-board-mode': 'The arrow board is {arrow-board}.',
  'roll-low-to-high': 'Road here: {road-shape}. It is rolled {rolling-direction}.',
};

/** Rules whose yes or no is a decision to begin or go on: the question is whether you do. */
export const goAheadStems: ReadonlySet<string> = new Set([
  'temperature-trend',
  'tack-set',
  'tack-clean-dry',
  'no-rain',
  'open-to-traffic',
]);
