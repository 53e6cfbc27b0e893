import type { Quiz, QuizItem } from '../reply.ts';
import { page } from '../wording/page.en.ts';

/** A quiz set to read out or answer on paper: each key is folded under its question, with why and whence. */
export function QuizSheet({ quiz }: { readonly quiz: Quiz }) {
  return (
    <section class="quiz">
      <h4>{quiz.title}</h4>
      {quiz.address && (
        <p>
          <a href={quiz.address}>{page.quizDesk}</a>
        </p>
      )}
      <ol>
        {quiz.items.map((item) => (
          <li>
            <p>{item.stem}</p>
            <ul>
              {item.options.map(({ text }) => (
                <li>{text}</li>
              ))}
            </ul>
            <details>
              <summary>{page.quizKey}</summary>
              <p>
                <b>{key(item)}</b> {item.why}
              </p>
              <p class="source">{item.source}</p>
            </details>
          </li>
        ))}
      </ol>
    </section>
  );
}

function key({ key, unit }: QuizItem): string {
  return `${typeof key === 'object' ? key.join(', ') : key}${unit ? ` ${unit}` : ''}`;
}
