/** Words by which a list of readings is known, and what stands round it. Spanish stands beside English. */
const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** Speak of readings. */
export const readingWords = set(
  'reading readings depths measurement measurements shots soundings survey surveyed gaps lecturas lectura medidas profundidades sondeos',
);
/** Speak of them only before a list. */
export const weakReadingWords = set('depth measured gauged read profundidad medido');
export const stationWords = set('sta stas station stations est estación estacion at @ chainage ch pk en');
/** First columns of a table of readings. */
export const stationColumns = set(
  'sta stas station stations estación estacion at chainage ch pk distance dist distancia along feet ft meters metres m location place position',
);
export const depthColumns = set('depth depths reading readings rut gap deep profundidad lectura');
export const widthColumns = set('width wide ancho');
export const noteColumns = set('note notes remark remarks comment comments defect nota notas');
export const everyWords = set('every each cada');
export const apartWords = set('apart intervals interval spacing centers centres');
export const acrossWords = set('across transverse crosswise ancho cross');
/** What a width stands behind. */
export const widthWords = set('across lane width ancho carril');
export const alongWords = set('along lengthwise largo');
/** Where across a reading was taken: they stand before it, or head its column. */
export const placeWords = set(
  'l lt left c cl ctr center centre centerline middle mid r rt right lwp rwp iwp owp inside outside edge shoulder izquierda izq centro derecha der deep is was reads read',
);
/** Words that take the number before them for themselves. */
export const claims = set(
  'wide width long length lane lanes lift lifts ton tons mph x by patch patches road area people trucks loads degrees deg percent pct ancho largo of to',
);
/** Words that part a list from its last figure. */
export const joins = set('and y then');
export const straightedges = set('straightedge straightedges edge regla stringline');
export const decimals = /^-?\d{1,6},\d{1,4}$/;
/** "Leave it out", "skip that row": a row that could not be read is done without. */
export const leaveOut =
  /\b(?:leave|skip|drop|ignore|forget|without)\b(?: (?:it|that|this|the|them|row|line|out|\d{1,4})){0,4}|\bdéjal[ao] fuera\b/i;
/** Words, as heads, that ask about the readings themselves. */
export const asksForSurvey = ['low', 'lows', 'deepest', 'simpson', 'reading', 'readings', 'survey', 'station'] as const;
export const simpsonWords = ['simpson', 'simpsons', "simpson's"] as const;
