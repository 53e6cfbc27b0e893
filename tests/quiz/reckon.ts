/** Numbers as they stand in a stem: "1 1/2", "3/4", "1,200", "0.05". */
const number = String.raw`(\d[\d,]*(?:\.\d+)?(?: \d+\/\d+)?(?:\/\d+)?)`;

/** Reads "1 1/2" as 1.5. */
export function read(text: string): number {
  const parts = text.replaceAll(',', '').split(' ');
  return parts.reduce((sum, part) => {
    const [over, under] = part.split('/').map(Number) as [number, number | undefined];
    return sum + (under ? over / under : over);
  }, 0);
}

/** Whole steps up, dust aside. */
const up = (x: number): number => Math.ceil(x - 1e-9);

/**
 * What each stem comes to by plain arithmetic in the units it is told in, worked here from the figures that a student
 * reads, without the engine. `#` stands for a figure.
 */
const reckoning: readonly (readonly [stem: string, by: (...figures: number[]) => number])[] = [
  ['A patch is # ft long and # ft wide. What is its area', (l, w) => (l! * w!) / 9],
  ['The mix weighs # lb/sq yd/in. The patch is # in thick', (u, d) => u! * d!],
  [
    'A patch is # ft long, # ft wide and # in deep on average, rolled. The mix weighs # lb',
    (l, w, d, u) => (((l! * w!) / 9) * d! * u!) / 2000,
  ],
  ['A patch of # sq yd is # in deep on average, rolled. The mix weighs # lb', (a, d, u) => (a! * d! * u!) / 2000],
  ['# tons go in the patch, and nothing is dumped past its ends. You add #% for waste', (m, w) => m! * (1 + w! / 100)],
  ['# tons went down on # sq yd. The mix weighs # lb', (m, a, u) => (m! * 2000) / a! / u!],
  ['The patch needs # tons. # loads of # tons each are down', (m, n, p) => m! - n! * p!],
  [
    'A truck carries # tons. The patch is # ft wide and # in deep, and the mix weighs # lb',
    (p, w, d, u) => (p! * 2000 * 9) / (u! * d! * w!),
  ],
  ['The patch takes # tons, and a truck carries # tons', (m, p) => up(m! / p!)],
  ['A bridge is posted for # tons, the whole truck. Empty, your truck weighs # tons', (g, t) => g! - t!],
  ['The deepest spot is # in, the average # in. A lift is at most # in', (d, _, m) => up(d! / m!)],
  ['A lift is to be # in after rolling, and the roll-down factor is #. How', (t, r) => t! * r!],
  ['The largest stone in a cold mix is # in', (s) => 1.5 * s!],
  ['A square-cut patch takes # tons in # equal lifts', (m, n) => m! / n!],
  [
    'One lift is # ft wide and # in thick after rolling. The roll-down factor is #. How',
    (w, t, r) => (w! * t! * r!) / 12,
  ],
  [
    'One lift is # ft wide and # in thick, rolled. The mix weighs # lb',
    (w, t, u) => (((w! * 100) / 9) * t! * u!) / 2000,
  ],
  [
    'The blade covers # ft at its angle, and strips overlap by # ft. How many strips does a width of # ft',
    (b, o, w) => up((w! - o!) / (b! - o!)),
  ],
  ['One lift takes # strips of the blade. How many laying passes does a patch of # lifts', (s, n) => s! * n!],
  ['The grader makes # passes of # ft at # mph, and moves #%', (n, l, v, e) => (n! * l!) / (v! * 88) / (e! / 100)],
  [
    'A drum is # ft wide. Strips overlap by # in, and the drum goes # in past each edge. How many strips does a width of # ft',
    (d, o, h, w) => up((w! + (2 * h!) / 12 - o! / 12) / (d! - o! / 12)),
  ],
  ['The width takes # strips of the drum, and all of it is rolled # times', (s, n) => s! * n!],
  [
    'One lift takes # trips of the roller over # ft. It goes # mph and rolls #%',
    (n, l, v, e) => (n! * l!) / (v! * 88) / (e! / 100),
  ],
  ['Rolling one lift takes # min. How long does the rolling of all # lifts', (t, n) => t! * n!],
  [
    'One load covers # ft, and a lift takes # trips. The roller goes # mph and rolls #%',
    (l, n, v, e) => (n! * l!) / (v! * 88) / (e! / 100),
  ],
  ['A drum is # ft wide. The widest overlap', (d) => d! * 6],
  ['A lane is # ft wide and falls #% across', (w, s) => (w! * 12 * s!) / 100],
  ['The shoulder is # in below the old edge. The patch adds # in', (d, p) => d! + p!],
  ['A round trip takes # min, and # trucks haul', (c, n) => c! / n!],
  [
    'Loading takes # min. The haul is # miles, at # mph loaded and # mph empty. The truck waits # min and dumps in # min',
    (l, h, v, r, w, u) => l! + (h! / v!) * 60 + w! + u! + (h! / r!) * 60,
  ],
  ['A round trip takes # min, and one load lasts the blade # min', (c, l) => up(c! / l!)],
  ['A truck brings # tons, and the crew lays # tons', (p, r) => (p! / r!) * 60],
  ['You spray # sq yd at # gal', (a, r) => a! * r!],
  ['A patch is # ft long and # ft wide. You spray one coat at # gal', (l, w, r) => ((l! * w!) / 9) * r!],
  ['The residual is to be # gal/sq yd. The emulsion is #% asphalt and not diluted', (r, e) => r! / (e! / 100)],
  [
    'The residual is to be # gal/sq yd. The emulsion is #% asphalt, and the tank is half water',
    (r, e) => r! / (e! / 100) / 0.5,
  ],
  [
    'You spray # gal/sq yd. The emulsion is #% asphalt, and the tank holds #% emulsion',
    (s, e, d) => (s! * e! * d!) / 10_000,
  ],
  ['A tank holds # gal of diluted emulsion; #% of it', (v, d) => v! * (1 - d! / 100)],
  ['The tank holds # gal. You spray # gal/sq yd, # ft wide', (t, r, w) => (9 * t!) / (r! * w!)],
  ['The pump gives # gal/min. You spray # gal/sq yd, # ft wide', (q, r, w) => (9 * q!) / (r! * w!)],
  ['You sprayed # gal on # sq yd', (v, a) => v! / a!],
  ['Cars go # mph, and # ft of a multilane road is closed', (s, w) => (s! >= 45 ? w! * s! : (w! * s! * s!) / 60)],
  ['For this road a merging taper is # ft. How long should a shifting', (l) => l! / 2],
  ['For this road a merging taper is # ft. How long should a shoulder', (l) => l! / 3],
  ['Traffic goes # mph. Along the work', (s) => 2 * s!],
  ['A taper is # ft long, with a cone every # ft', (l, s) => up(l! / s!) + 1],
  ['Traffic is held for # min. # cars an hour come that way, and each takes # ft', (t, v, r) => ((v! * t!) / 60) * r!],
  ['Three signs stand # ft apart', (d) => 3 * d!],
];

const patterns = reckoning.map(([stem, by]) => {
  const escaped = stem.split('#').map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return { pattern: new RegExp(`^${escaped.join(number)}`), by };
});

/** How many stems it knows. */
export const stemsKnown = patterns.length;

/** What a stem comes to; undefined for a stem that is none of these problems. */
export function reckoned(stem: string): { readonly at: number; readonly result: number } | undefined {
  for (const [at, { pattern, by }] of patterns.entries()) {
    const found = pattern.exec(stem);
    if (found) return { at, result: by(...found.slice(1).map(read)) };
  }
  return undefined;
}

/** The figure an option says: "about 7/8 in (0.833 in)" is 0.833. */
export function figureIn(text: string): number {
  const beside = /\(([\d.]+) /.exec(text);
  return beside ? Number(beside[1]) : read(new RegExp(number).exec(text)![1]!);
}
