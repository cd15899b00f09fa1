import { useState } from 'react';
import { beadings } from '../../engine/trade';
import { w } from '../../words';
import { Button, Sheet } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { NoteSheet } from './NoteSheet';
import { usePad } from './PadContext';
import { Tile, Tiles } from './Tiles';

const words = w.round;

/** What belongs to the whole zone: photo, and only then the spray bottle; a note. */
export function WholeZone() {
  const { view, touch, expectPhoto, keepPhoto } = usePad();
  const [sheet, setSheet] = useState<'beading' | 'note' | undefined>();
  const { draft } = view;
  const beading = beadings.find((b) => b.id === draft.beading);
  return (
    <fieldset className="pad-group" aria-label={words.zone.more}>
      <p className="pad-group-label" aria-hidden="true">
        {words.zone.more}
        {draft.photos.length > 0 && `: ${words.card.photos(draft.photos.length)}`}
      </p>
      <div className="finding-parts">
        <PhotoTake
          what={words.photo.theZone}
          expect={() => expectPhoto('zone')}
          keep={(file) => keepPhoto('zone', file)}
        />
        <Button size="round" onClick={() => setSheet('beading')}>
          {beading ? words.beading.is(beading.name) : words.beading.do}
        </Button>
        <Button size="round" onClick={() => setSheet('note')}>
          {words.card.note}
        </Button>
      </div>
      {draft.note && <p className="finding-note">{draft.note}</p>}
      <Sheet open={sheet === 'beading'} title={words.beading.do} onClose={() => setSheet(undefined)}>
        <p>{words.beading.hint}</p>
        <Tiles label={words.beading.ask} wide>
          {beadings.map(({ id, name }) => (
            <Tile
              key={id}
              label={name.charAt(0).toUpperCase() + name.slice(1)}
              pressed={draft.beading === id}
              strong
              onTouch={() => {
                setSheet(undefined);
                touch({ do: 'beading', beading: id });
              }}
            />
          ))}
        </Tiles>
      </Sheet>
      {sheet === 'note' && (
        <NoteSheet
          of="zone"
          label={words.card.zoneNoteLabel}
          note={draft.note ?? ''}
          onClose={() => setSheet(undefined)}
          onKeep={(text) => {
            setSheet(undefined);
            touch({ do: 'note', of: 'zone', text });
          }}
        />
      )}
    </fieldset>
  );
}
