import type { Page } from 'playwright-core';

export interface State {
  readonly name: string;
  readonly show: (page: Page, address: string) => Promise<void>;
}

/** The page as it stands once one question after the other has been answered. */
function asked(name: string, ...questions: readonly string[]): State {
  return {
    name,
    show: async (page, address) => {
      await page.goto(address);
      for (const [at, question] of questions.entries()) {
        await page.getByLabel('Your question').fill(question);
        await page.getByLabel('Your question').press('Enter');
        await page.locator('.entry').nth(at).waitFor();
      }
    },
  };
}

const at = (name: string, path: string): State => ({
  name,
  show: async (page, address) => {
    await page.goto(address + path);
    await page.locator('h1').first().waitFor();
  },
});

const tons = 'how many tons for 300 x 12 ft at 2 in';

/** What the page can look like, each under its name. */
export const states: readonly State[] = [
  at('opening', '/'),
  asked('tons', tons),
  asked('follow-up', tons, 'what about 14 feet wide?'),
  asked('verdict', 'can we lay a 2 in lift'),
  asked('fault', 'the mat is tearing behind the blade'),
  asked('steps', 'we swept, what is next'),
  asked('zone', 'lay out the work zone for a 300 ft patch, 45 mph, 12 ft lane, rural two-lane road'),
  asked('lifts', 'how many lifts for a patch 4 in deep'),
  asked('survey', 'station,left,right\n0+00,1,1\n0+25,1,3\n0+50,1,1\n12 ft wide'),
  asked('emergency', 'my buddy got burned with hot asphalt'),
  asked('clarify', 'how many tons for 150 x 12 ft'),
  asked('refusal', 'who won the game'),
  asked('card', 'what is a windrow'),
  asked('quiz-in-talk', 'five question quiz on rolling'),
  at('cards', '/cards'),
  at('rules', '/rules'),
  at('rule', '/rules/limit/lift-max'),
  at('words', '/words'),
  at('quiz', '/quiz'),
  at('job', '/job'),
  {
    name: 'sheet',
    show: async (page, address) => {
      await asked('', tons, 'lay out the work zone for a 300 ft patch, 45 mph, 12 ft lane, rural two-lane road').show(
        page,
        address,
      );
      // The phone fills the sheet with what it keeps, a moment after it is shown.
      await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
      await page.waitForTimeout(500);
      await page.goto(`${address}/sheet`);
      await page.locator('.figures').first().waitFor();
    },
  },
];
