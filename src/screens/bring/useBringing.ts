import { useEffect, useRef, useState } from 'react';
import { type TakenMany, takeMany } from '../../actions';
import { useDesk } from '../shell';

interface Now {
  readonly done: number;
  readonly of: number;
  readonly name: string;
}

/** What came of it, with files that are no photos at all. */
export interface Brought extends TakenMany {
  readonly notPhotos: number;
}

/** Some platforms give no type for these; what is in the file decides when it is read. */
const named = /\.(jpe?g|png|webp|heic|heif|avif|tiff?)$/i;
const isPhoto = (file: File): boolean => file.type.startsWith('image/') || named.test(file.name);

/** Old photos being kept one after the other; each stands as soon as it is kept. Leaving the screen leaves off. */
export const useBringing = (sculpture: string) => {
  const desk = useDesk();
  const [now, setNow] = useState<Now>();
  const [brought, setBrought] = useState<Brought>();
  const stopper = useRef<AbortController>(undefined);
  useEffect(() => () => stopper.current?.abort(), []);
  const take = async (files: readonly File[]) => {
    const photos = files.filter(isPhoto);
    stopper.current = new AbortController();
    setNow({ done: 0, of: photos.length, name: photos[0]?.name ?? '' });
    const taken = await takeMany(desk, sculpture, photos, { heard: setNow, signal: stopper.current.signal });
    setNow(undefined);
    setBrought((before) => ({
      each: [...(before?.each.filter(({ photo }) => photo) ?? []), ...taken.each],
      left: taken.left,
      notPhotos: files.length - photos.length,
    }));
  };
  return { now, brought, take, stop: () => stopper.current?.abort(), forget: () => setBrought(undefined) } as const;
};
