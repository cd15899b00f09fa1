import { useLayoutEffect, useState } from 'react';
import { expectLookPhoto, lookPhotoExpected, noLookPhoto } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { useDesk, useHoldUp } from '../shell';

interface PhotoExpectedProps {
  /** Looks a photo may be expected for, and their zones. */
  readonly looks: readonly Thing<'look'>[];
  readonly zones: readonly Thing<'zone'>[];
  readonly keep: (look: string, file: File) => void;
}

/** After a restart behind the camera: the photo that did not come is asked for again. */
export function PhotoExpected({ looks, zones, keep }: PhotoExpectedProps) {
  const desk = useDesk();
  const [expected, setExpected] = useState<string>();
  const holdUp = useHoldUp();
  useLayoutEffect(() => holdUp(lookPhotoExpected(desk).then(setExpected)), [desk, holdUp]);
  const look = looks.find((l) => l.thing === expected);
  const zone = zones.find((z) => z.thing === look?.body.zone);
  if (!look || !zone || (look.body.photos ?? []).length > 0) return null;
  const what = w.round.zone.title(zone.body.letter, zone.body.name);
  return (
    <Notice
      kind="caution"
      title={w.round.photo.expected(what)}
      actions={
        <>
          <PhotoTake
            what={what}
            expect={() => expectLookPhoto(desk, look.thing).then(() => true)}
            keep={(file) => keep(look.thing, file)}
          />
          <Button size="round" onClick={() => void noLookPhoto(desk).then(() => setExpected(undefined))}>
            {w.round.photo.without}
          </Button>
        </>
      }
    >
      <p>{w.round.photo.expectedWhat}</p>
    </Notice>
  );
}
