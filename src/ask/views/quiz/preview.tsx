import type { Built, QuizSet } from '../../quiz/build.ts';
import { addressOf, type Call, type Screen } from '../../quiz/desk/call.ts';
import { hashText } from '../../quiz/random.ts';
import { quiz } from '../../wording/quiz.en.ts';
import { desk } from '../../wording/quiz-desk.en.ts';
import { Certifies } from './frame.tsx';
import { PaperOptions, Stem } from './item.tsx';
import { KeyOf } from './key.tsx';

type Set = Extract<Built, { readonly set: QuizSet }>;

/** The set as it was made: what can be done with it, and every question with its key folded under it. */
export function Preview({ built: { set, made }, call }: { readonly built: Set; readonly call: Call }) {
  const { request } = call;
  const named: Call = { ...call, request: { ...request, seed: set.seed } };
  return (
    <section class="preview" aria-labelledby="set">
      <h2 id="set" tabindex={-1}>
        {desk.preview(set.title)}
      </h2>
      <p>{desk.made(set.seed, set.rules.version)}</p>
      {set.items.some(({ mustPass }) => mustPass) && <p>{quiz.mustPassRule}</p>}
      <Uses call={named} />
      <ol class="questions">
        {made.map(({ item, token, must }, at) => (
          <li id={`item-${at + 1}`}>
            <Stem item={item} number={at + 1} />
            <PaperOptions item={item} />
            <p class="source">
              {desk.level(
                desk.topicNames[item.topic] ?? item.topic,
                desk.levelNames[item.level] ?? item.level,
                desk.kindNames[item.kind] ?? item.kind,
              )}
            </p>
            <details>
              <summary>{desk.answer}</summary>
              <KeyOf item={item} />
            </details>
            {must ? (
              <p class="source">{desk.mustStay}</p>
            ) : (
              <a class="go" href={`${swapped(named, token)}#item-${at + 1}`} aria-label={`${desk.swap} ${at + 1}`}>
                {desk.swap}
              </a>
            )}
          </li>
        ))}
      </ol>
      <Certifies />
    </section>
  );
}

const swapped = (call: Call, token: string): string =>
  addressOf('desk', { ...call, request: { ...call.request, swaps: [...(call.request.swaps ?? []), token] } });

/** Everything that a set is good for. */
function Uses({ call }: { readonly call: Call }) {
  const { request } = call;
  const { links } = desk;
  const { variant: _, ...a } = request;
  const { swaps: __, ...fresh } = a;
  const at = (screen: Screen, other: Partial<Call> = {}): string => addressOf(screen, { ...call, ...other });
  const file = (format: string): string => `${at('file')}&format=${format}`;
  const another = hashText(`${request.seed} again`);
  return (
    <nav class="uses" aria-label={desk.use}>
      <ul class="go-list">
        <Go to={at('take', { feedback: 'end' })} text={links.take} />
        <Go to={at('take', { feedback: 'each' })} text={links.takeEach} />
        <Go to={at('sheet')} text={links.sheet} />
        <Go to={at('key')} text={links.key} />
        <Go to={at('tailgate')} text={links.tailgate} />
        {request.variant === 'B' ? (
          <Go to={at('desk', { request: a })} text={links.a} />
        ) : (
          <Go to={at('desk', { request: { ...request, variant: 'B' } })} text={links.b} />
        )}
        <Go to={at('desk', { request: { ...fresh, seed: another } })} text={links.another} />
        <Go to={at('classes')} text={links.class} />
      </ul>
      <h3>{desk.files}</h3>
      <ul class="go-list">
        <Go to={file('json')} text={links.json} file />
        <Go to={file('csv')} text={links.csv} file />
        <Go to={file('spreadsheet')} text={links.spreadsheet} file />
        <Go to={file('qti3')} text={links.qti3} file />
        <Go to={file('text')} text={links.text} file />
      </ul>
    </nav>
  );
}

const Go = ({ to, text, file = false }: { readonly to: string; readonly text: string; readonly file?: boolean }) => (
  <li>
    <a class="go" href={to} download={file || undefined}>
      {text}
    </a>
  </li>
);
