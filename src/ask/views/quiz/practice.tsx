import { screens } from '../../quiz/desk/call.ts';
import { desk } from '../../wording/quiz-desk.en.ts';

/** The practice screen before its script has begun: what it is, and what to do without script. */
export const PracticeStart = () => (
  <section id="practice">
    <h1>{desk.practice.heading}</h1>
    <p>{desk.practice.how}</p>
    <noscript>
      <p class="notice">{desk.practice.noScript}</p>
    </noscript>
    <p>
      <a class="go" href={screens.desk}>
        {desk.sheet.back}
      </a>
    </p>
  </section>
);
