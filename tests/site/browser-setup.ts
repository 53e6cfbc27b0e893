import { findBrowser } from './browser.ts';

/** Unpacks the browser before the first site test, whose time is not meant for it. */
export default async function setup(): Promise<void> {
  await findBrowser();
}
