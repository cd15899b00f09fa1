import { useLayoutEffect, useState } from 'react';
import { expectPhoto, noPhotoExpected, type PhotoExpected, type PhotosOfWork, photoExpected } from '../../actions';
import { w, zoneName } from '../../words';
import { Button, Notice } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { useDesk, useHoldUp } from '../shell';
import { squareName } from './placeNames';

interface PhotoExpectedNoticeProps {
  readonly work: PhotosOfWork;
  readonly keep: (expected: PhotoExpected, file: File) => void;
}

/** After a restart behind the camera: the photo that did not come is asked for again. */
export function PhotoExpectedNotice({ work, keep }: PhotoExpectedNoticeProps) {
  const desk = useDesk();
  const [expected, setExpected] = useState<PhotoExpected>();
  const holdUp = useHoldUp();
  useLayoutEffect(() => holdUp(photoExpected(desk).then(setExpected)), [desk, holdUp]);
  if (expected?.sculpture !== work.sculpture.thing) return null;
  const what = expectedOf(work, expected);
  return (
    <Notice
      kind="caution"
      title={w.round.photo.expected(what)}
      actions={
        <>
          <PhotoTake
            what={what}
            expect={() => expectPhoto(desk, expected).then(() => true)}
            keep={(file) => {
              setExpected(undefined);
              keep(expected, file);
            }}
          />
          <Button size="round" onClick={() => void noPhotoExpected(desk).then(() => setExpected(undefined))}>
            {w.round.photo.without}
          </Button>
        </>
      }
    >
      <p>{w.round.photo.expectedWhat}</p>
    </Notice>
  );
}

const expectedOf = (work: PhotosOfWork, expected: PhotoExpected): string => {
  const station = work.stations.find(({ thing }) => thing === expected.station);
  if (station) return w.photos.station(station.body.letter, station.body.aim);
  const sentinel = work.sentinels.find(({ thing }) => thing === expected.sentinel);
  if (sentinel) return squareName(work, sentinel);
  const zone = work.zones.find(({ thing }) => thing === expected.zone);
  return zone ? zoneName(zone) : w.photos.expectedOther;
};
