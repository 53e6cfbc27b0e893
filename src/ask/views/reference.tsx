import type { Child } from 'hono/jsx';
import { cards } from '../cards.generated.ts';
import { cardsAbout, everyRecord, linesOf, plainVoice, recordAt } from '../reference.ts';
import { capital } from '../say.ts';
import type { Card } from '../search/card.ts';
import { cardsById } from '../search/shelf.ts';
import { basisOf, excerptOf, filled } from '../search/shown.ts';
import { page } from '../wording/page.en.ts';
import { reference as words } from '../wording/reference.en.ts';
import type { Dress } from './document.tsx';
import { framed } from './framed.tsx';

/** A page to look things up on, as a whole document; undefined where no card or record is at the address. */
export function referencePage(address: URL, dress: Dress): string | undefined {
  const [screen, ...rest] = address.pathname.split('/').slice(1);
  const path = rest.join('/');
  if (screen === 'cards') {
    if (path === '')
      return lookUp('cards', words.cards, dress, <CardList search={address.searchParams.get('q') ?? ''} />);
    const card = cardsById.get(path);
    return card && lookUp('cards', capital(card.title), dress, <CardPage card={card} />);
  }
  if (screen === 'rules') {
    if (path === '') return lookUp('rules', words.rules, dress, <RuleList />);
    const record = recordAt(path);
    return record && lookUp('rules', capital(record.title), dress, <RecordPage address={path} />);
  }
  return screen === 'words' && path === '' ? lookUp('words', words.words, dress, <Glossary />) : undefined;
}

function lookUp(at: 'cards' | 'rules' | 'words', title: string, dress: Dress, children: Child): string {
  const { version } = plainVoice.knowledge;
  return framed({
    at,
    look: 'reference',
    title: `${title} – ${page.name}`,
    dress,
    version,
    children: (
      <>
        <h1>{title}</h1>
        {children}
      </>
    ),
  });
}

function CardList({ search }: { readonly search: string }) {
  const found = search.trim() === '' ? undefined : cardsAbout(search.slice(0, 200));
  const kinds = Object.entries(words.kinds) as [Card['kind'], string][];
  return (
    <>
      <p>{words.cardsIntro}</p>
      <form class="search" method="get" action="/cards">
        <label for="search">{words.search}</label>
        <div class="line">
          <input id="search" name="q" type="search" value={search} enterkeyhint="search" />
          <button type="submit" class="send">
            {words.find}
          </button>
        </div>
      </form>
      {found ? (
        <section aria-live="polite">
          <h2>{words.found(found.length, search)}</h2>
          <Links list={found} />
        </section>
      ) : (
        kinds.map(([kind, heading]) => (
          <details>
            <summary>{heading}</summary>
            <Links list={cards.filter((card) => card.kind === kind)} />
          </details>
        ))
      )}
    </>
  );
}

function Links({ list }: { readonly list: readonly Card[] }) {
  return (
    <ul class="list">
      {list.map(({ id, title }) => (
        <li>
          <a href={`/cards/${id}`}>{capital(title)}</a>
        </li>
      ))}
    </ul>
  );
}

function CardPage({ card }: { readonly card: Card }) {
  return (
    <>
      {card.emergency && (
        <div class="cautions">
          <b>{words.first}</b>
          <p>{card.emergency.first}</p>
        </div>
      )}
      {filled(card.text, plainVoice)
        .split('\n')
        .map((paragraph) => (
          <p>{paragraph}</p>
        ))}
      <p class="source">{basisOf(card).join('; ')}</p>
      <h2>{words.links}</h2>
      <ul class="list">
        {card.links.map((link) => {
          const other = link.startsWith('card/') ? cardsById.get(link.slice(5)) : recordAt(link);
          const to = link.startsWith('card/') ? `/cards/${link.slice(5)}` : `/rules/${link}`;
          return (
            other && (
              <li>
                <a href={to}>{capital(other.title)}</a>
              </li>
            )
          );
        })}
      </ul>
      <AskIt title={card.title} />
    </>
  );
}

const AskIt = ({ title }: { readonly title: string }) => (
  <a class="again" href={`/?q=${encodeURIComponent(title)}`}>
    {words.askIt}
  </a>
);

function RuleList() {
  const kinds = [...new Set(everyRecord.map(({ kind }) => kind))].filter((kind) => kind !== 'choice-table');
  return (
    <>
      <p>{words.rulesIntro}</p>
      {kinds.map((kind) => (
        <details>
          <summary>{words.folders[kind]}</summary>
          <ul class="list">
            {everyRecord
              .filter((record) => words.folders[record.kind] === words.folders[kind])
              .map((record) => (
                <li>
                  <a href={`/rules/${record.kind}/${record.id}`}>{capital(record.title)}</a>
                </li>
              ))}
          </ul>
        </details>
      ))}
    </>
  );
}

function RecordPage({ address }: { readonly address: string }) {
  const record = recordAt(address)!;
  return (
    <>
      <p class="source">
        <a href="/rules">{words.folders[record.kind]}</a> {address}
      </p>
      <dl>
        {linesOf(record).map(({ label, texts }) => (
          <>
            <dt>{label}</dt>
            {texts.map((text) => (
              <dd>{text}</dd>
            ))}
          </>
        ))}
      </dl>
      <AskIt title={record.title} />
    </>
  );
}

/** The cards that explain a word, by the alphabet. */
function Glossary() {
  const terms = cards.filter(({ kind }) => kind === 'term').sort((a, b) => (a.title < b.title ? -1 : 1));
  return (
    <>
      <p>{words.wordsIntro}</p>
      <dl>
        {terms.map((card) => (
          <>
            <dt>
              <a href={`/cards/${card.id}`}>{capital(card.title)}</a>
            </dt>
            <dd>{excerptOf(filled(card.text, plainVoice))}</dd>
          </>
        ))}
      </dl>
    </>
  );
}
