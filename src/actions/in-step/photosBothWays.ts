import type { Folder, Listed } from '../../device/folder';
import { StoreProblem } from '../../device/storeProblem';
import { type BodyOf, idPart } from '../../engine/record';
import type { Desk } from '../desk';
import { inTurn } from '../inTurn';
import { thumbOfArrived } from '../thumbOfArrived';
import type { Fault } from './joined';
import { photosFolder } from './listed';
import { stepFault } from './reasonCodes';
import { bufferOf, hashOf } from './segmentOf';
import type { Stepping } from './step';

export interface PhotosMoved {
  readonly photosIn: number;
  readonly photosOut: number;
  readonly faults: readonly Fault[];
}

const endings: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/heic': 'heic',
  'image/heif': 'heif',
  'image/avif': 'avif',
};

/**
 * Photos the folder lacks go out, photos missing here come in, one by one, each held against its hash on the way. Those of erased photos
 * are taken out of the folder; those that left this device to make room stay away.
 */
export const photosBothWays = async (
  desk: Desk,
  folder: Folder,
  listed: ReadonlyMap<string, Listed>,
  { heard, signal }: Stepping,
): Promise<PhotosMoved> => {
  const { store } = desk;
  const erased = (await store.erased()).hashes;
  for (const [hash, { name }] of listed) if (erased.has(hash)) await folder.remove(`${photosFolder}/${name}`, signal);
  const here = new Set(await store.photosHere());
  const away = new Set((await store.metas('away ')).map(([hash]) => hash));
  const photos = (await store.ofKind('photo')).map(({ thing, lead }) => ({
    hash: idPart(thing),
    body: lead.body as BodyOf<'photo'>,
  }));
  const out = photos.filter(({ hash, body }) => {
    const there = listed.get(hash);
    return here.has(hash) && (!there || (there.bytes !== undefined && there.bytes !== body.bytes));
  });
  const coming = photos.filter(({ hash }) => listed.has(hash) && !here.has(hash) && !away.has(hash));
  const all = out.length + coming.length;
  const faults: Fault[] = [];
  let photosOut = 0;
  let photosIn = 0;
  let done = 0;
  for (const { hash, body } of out) {
    heard?.('photos', done++, all);
    signal?.throwIfAborted();
    const photo = await store.photo(hash);
    if (!photo) continue;
    const bytes = new Uint8Array(photo.bytes);
    const path = `${photosFolder}/${hash}.${endings[body.mime] ?? 'bin'}`;
    if ((await hashOf(bytes)) !== hash) {
      faults.push({ fault: stepFault('step: photo here altered', { path }) });
      continue;
    }
    const there = listed.get(hash);
    if (there?.bytes === bytes.length) continue;
    // Another length than the whole photo has: half of it was written once.
    if (there) await folder.remove(`${photosFolder}/${there.name}`, signal);
    if ((await folder.put(path, bytes, signal)) === 'put') photosOut++;
  }
  for (const { hash, body } of coming) {
    heard?.('photos', done++, all);
    const path = `${photosFolder}/${listed.get(hash)?.name}`;
    const bytes = await folder.get(path, signal);
    if (!bytes) continue;
    if ((await hashOf(bytes)) !== hash) {
      faults.push({ fault: stepFault('step: photo in the folder altered', { path }) });
      continue;
    }
    if (await kept(desk, hash, body.mime, bufferOf(bytes))) photosIn++;
  }
  return { photosIn, photosOut, faults };
};

/** Erased here while it was on its way: it is not kept, and that is no fault. */
const kept = async (desk: Desk, sha256: string, mime: string, bytes: ArrayBuffer): Promise<boolean> => {
  try {
    const photo = { sha256, mime, bytes };
    await inTurn(desk.store, () => desk.store.keepPhoto(photo));
    await thumbOfArrived(desk, photo);
    return true;
  } catch (error) {
    if (error instanceof StoreProblem && error.reason.code === 'photo erased') return false;
    throw error;
  }
};
