import type { Page } from 'playwright-core';

/** Asks a question on the page, and waits for its answer. */
export async function send(page: Page, question: string): Promise<void> {
  const before = await page.locator('.entry').count();
  await page.getByLabel('Your question').fill(question);
  await page.getByLabel('Your question').press('Enter');
  await page.locator('.entry').nth(before).waitFor();
}

/** The figure of the last answer, as it is read. */
export const figure = (page: Page): Promise<string> => page.locator('.figure.main .amount').last().innerText();
