/**
 * Pictures of every screen, taken from the demo in the built app, to be looked at. `npm run pictures` takes each in four sizes into a
 * folder outside the repository and lays them side by side; `-- FOLDER` names another folder, `-- FOLDER sun` takes them in the sun
 * theme, `-- FOLDER de-DE` in German. `-- readme` takes the README's own pictures anew.
 */
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startTablet } from '../browser/chromium';
import { startHost } from '../browser/server';
import { takeEvery } from './every';
import { takeReadme } from './readme';

const [folder = join(tmpdir(), 'patina-round-pictures'), ...ways] = process.argv.slice(2);
const host = await startHost();
const tablet = await startTablet();
try {
  const page = await tablet.context.newPage();
  await page.setViewportSize({ width: 820, height: 1180 });
  await page.goto(host.url);
  if (folder === 'readme') await takeReadme(page);
  else await takeEvery(page, folder, ways);
} finally {
  await tablet.close();
  await host.stop();
}
