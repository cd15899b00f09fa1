import { useLayoutEffect, useState } from 'react';
import { type Light, noPhotoExpected, type PhotoExpected, photoExpected, type ShotList } from '../../actions';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { useDesk, useHoldUp } from '../shell';
import { nameOfShot, type ShotShown, shownShot } from './shotText';
import { useShotCamera } from './useShotCamera';

interface ShotExpectedProps {
  readonly list: ShotList;
  readonly light: Light | undefined;
}

/** After a restart behind the camera: the photo that did not come is asked for again. */
export function ShotExpected({ list, light }: ShotExpectedProps) {
  const desk = useDesk();
  const [expected, setExpected] = useState<PhotoExpected>();
  const holdUp = useHoldUp();
  useLayoutEffect(() => holdUp(photoExpected(desk).then(setExpected)), [desk, holdUp]);
  const shot = expected && list.shots.find(({ of, thing }) => expected[of] === thing);
  if (!shot || shot.photos.length > 0 || expected?.round !== list.round?.thing) return null;
  return <AskedAgain list={list} light={light} shown={shownShot(list, shot)} done={() => setExpected(undefined)} />;
}

interface AskedAgainProps extends ShotExpectedProps {
  readonly shown: ShotShown;
  readonly done: () => void;
}

function AskedAgain({ list, light, shown, done }: AskedAgainProps) {
  const desk = useDesk();
  const name = nameOfShot(shown);
  const { expect, keep, busy, wrong } = useShotCamera(list, shown.shot, name, light);
  const words = w.round.photo;
  return (
    <Notice
      kind="caution"
      title={words.expected(name)}
      actions={
        busy ? (
          <p role="status">{words.keeping}</p>
        ) : (
          <>
            <PhotoTake what={name} expect={expect} keep={(file) => void keep(file, done)} />
            <Button size="round" onClick={() => void noPhotoExpected(desk).then(done)}>
              {words.without}
            </Button>
          </>
        )
      }
    >
      <p>{wrong ?? words.expectedWhat}</p>
    </Notice>
  );
}
