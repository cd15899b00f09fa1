import { useRef } from 'react';
import { w } from '../../words';
import { Button, type ButtonSize } from './Button';
import { CameraIcon, FileIcon } from './icons';

interface PhotoTakeProps {
  /** Names what is photographed, for ears. */
  readonly what: string;
  /** Resolves once it is durably noted that a photo is expected; false where that failed. */
  readonly expect: () => Promise<boolean>;
  readonly keep: (file: File) => void;
  readonly size?: ButtonSize;
}

/** The camera of the tablet, or a photo it already has. Everything is saved before either opens. */
export function PhotoTake({ what, expect, keep, size = 'round' }: PhotoTakeProps) {
  const camera = useRef<HTMLInputElement>(null);
  const gallery = useRef<HTMLInputElement>(null);
  const open = async (input: HTMLInputElement | null) => {
    if (await expect()) input?.click();
  };
  const took = (input: HTMLInputElement) => {
    const file = input.files?.[0];
    // The same file may be chosen twice in a row; without this the second choice is no change.
    input.value = '';
    if (file) keep(file);
  };
  const words = w.round.photo;
  return (
    <>
      <Button size={size} icon={<CameraIcon />} aria-label={words.takeOf(what)} onClick={() => open(camera.current)}>
        {words.take}
      </Button>
      <Button size={size} icon={<FileIcon />} aria-label={words.chooseOf(what)} onClick={() => open(gallery.current)}>
        {words.choose}
      </Button>
      <input
        ref={camera}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        tabIndex={-1}
        aria-label={words.takeOf(what)}
        onChange={(e) => took(e.target)}
      />
      <input
        ref={gallery}
        type="file"
        accept="image/*"
        hidden
        tabIndex={-1}
        aria-label={words.chooseOf(what)}
        onChange={(e) => took(e.target)}
      />
    </>
  );
}
