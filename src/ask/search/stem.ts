/** Forms of trade verbs and a few nouns that endings do not show. */
const irregular: Readonly<Record<string, string>> = {
  broke: 'break',
  broken: 'break',
  laid: 'lay',
  swept: 'sweep',
  ran: 'run',
  went: 'go',
  gone: 'go',
  goes: 'go',
  dug: 'dig',
  shot: 'shoot',
  froze: 'freeze',
  frozen: 'freeze',
  burnt: 'burn',
  stung: 'sting',
  bitten: 'bite',
  fell: 'fall',
  blew: 'blow',
  stood: 'stand',
  sat: 'sit',
  men: 'man',
  kids: 'kid',
  children: 'child',
  feet: 'foot',
  people: 'person',
  leftover: 'left',
  bicycle: 'bike',
  bicycles: 'bike',
};

/** A word without its ending, so that "rolling" and "rolls" meet. Words of three letters stay as they are. */
export function stem(word: string): string {
  const known = Object.hasOwn(irregular, word) ? irregular[word] : undefined;
  if (known) return known;
  if (word.length <= 3) return word;
  if (word.endsWith('ies') && word.length > 4) return `${word.slice(0, -3)}y`;
  if (/(?:ss|us|is)$/.test(word)) return word;
  const bare = word.replace(/(?:ing|ed|es|s)$/, '');
  if (bare.length < 3) return word;
  const single = /([bdgmnprt])\1$/.test(bare) ? bare.slice(0, -1) : bare;
  return single.endsWith('e') ? single.slice(0, -1) : single;
}
