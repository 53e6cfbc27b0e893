import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const tags = ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds wrong on a page, each with a few of the places. */
export async function violationsOn(page: Page): Promise<[string, string[]][]> {
  const { violations } = await new AxeBuilder({ page }).withTags(tags).analyze();
  return violations.map(({ id, nodes }) => [id, nodes.slice(0, 3).map(({ html }) => html)]);
}
