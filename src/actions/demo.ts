import { tabBox } from '../device/box';
import type { PhotoBytes } from '../device/store';
import { unpacked } from '../device/unpacked';
import type { Desk, Outcome } from './desk';
import { databaseNames, type Opening, opened } from './opening';
import { attempt, refuse } from './outcome';
import { stopWorkingOut } from './questions';
import { deedName, refusal } from './reasonCodes';
import { toldIn } from './toldIn';

const openHere = 'patina-round.demo-open';

/** Whether this tab was in the demo when it was loaded anew: a reload, or a change of language, does not lead out of it. */
export const demoWasOpen = (): boolean => tabBox.read(openHere) === true;

/** The languages the demo can be filled in. */
type DemoLanguage = 'en' | 'de';

/** One photo file of the demo, beside its list. `thumb` where a small one was made. */
interface DemoPhoto {
  readonly sha256: string;
  readonly mime: string;
  readonly file: string;
  readonly thumb?: string;
}

/**
 * Opens the invented collection in a database of its own, filling it from the files made at build time when it is empty.
 * Its people write in the language it is filled in; what is there stays as it was written. The person's own record is not touched.
 */
export const openDemo = async (
  language: DemoLanguage,
  progress?: (done: number, all: number) => void,
): Promise<Opening> => {
  const opening = await opened(databaseNames.demo, true);
  if (opening.state === 'removed') return opening.startAfresh().then(() => openDemo(language, progress));
  if (opening.state !== 'open') return opening;
  const { desk } = opening;
  tabBox.write(openHere, true);
  if (desk.store.mode === 'reading' || (await desk.store.held()).entries > 0) return opening;
  const filled = await fill(desk, language, progress);
  if (filled.ok) return opening;
  tabBox.forget(openHere);
  await desk.store.destroy();
  return { state: 'problem', reason: filled.reason };
};

const fill = (desk: Desk, language: DemoLanguage, progress?: (done: number, all: number) => void): Promise<Outcome> =>
  attempt(async () => {
    const { readSurvey } = await import('../engine/exchange');
    const survey = readSurvey(await unpacked(await asset('demo.survey.bin')));
    if (!survey.ok) return refuse(refusal('demo not here', { said: survey.problems[0]?.code ?? '' }));
    const entries = language === 'en' ? survey.entries : toldIn(await texts(language), survey.entries);
    const photos = JSON.parse(new TextDecoder().decode(await asset('photos.json'))) as readonly DemoPhoto[];
    for (const photo of photos) {
      const { sha256, mime } = photo;
      const kept = (bytes: ArrayBuffer): PhotoBytes => ({ sha256, mime, bytes });
      await desk.store.keepPhoto(kept(await asset(photo.file)));
      if (photo.thumb) await desk.store.keepThumb(kept(await asset(photo.thumb)));
    }
    const deed = {
      id: desk.newId(),
      name: deedName('deed: survey carried in', { entries: entries.length }),
      at: desk.now(),
    };
    await desk.store.takeIn(entries, deed, { collection: survey.collection, ...(progress ? { progress } : {}) });
    return {};
  });

/** Each text of the demo, beside its own in another language. */
const texts = async (language: DemoLanguage): Promise<Readonly<Record<string, string>>> =>
  JSON.parse(new TextDecoder().decode(await unpacked(await asset(`texts.${language}.bin`))));

const asset = async (file: string): Promise<ArrayBuffer> => {
  const missing = (said: string) => refuse(refusal('demo not here', { said }));
  const answer = await fetch(`${import.meta.env.BASE_URL}demo/${file}`).catch((error: unknown) =>
    missing(String(error)),
  );
  return answer.ok ? answer.arrayBuffer() : missing(`${answer.status} ${file}`);
};

/** Closes the demo; what was done in it stays until it is removed. */
export const leaveDemo = (desk: Desk): void => {
  tabBox.forget(openHere);
  desk.store.close();
};

/** Deletes the demo and everything done in it. */
export const removeDemo = (desk?: Desk): Promise<Outcome> =>
  attempt(async () => {
    if (desk && !desk.invented) return {};
    tabBox.forget(openHere);
    const opening = desk ? ({ state: 'open', desk } as const) : await opened(databaseNames.demo, true);
    if (opening.state !== 'open') return {};
    // A worker about to open the database to read it would make it anew, empty.
    stopWorkingOut(opening.desk);
    await opening.desk.store.destroy();
    return {};
  });
