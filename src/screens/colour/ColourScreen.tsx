import { useState } from 'react';
import { sculptureRecordOf, tabs, thingsOf } from '../../actions';
import { meanReading, type Spot, spotsOf } from '../../engine/colour';
import type { SculptureRecord, Thing } from '../../engine/record';
import { w, workName } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { LongList } from '../parts/LongList';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { AgreedColours } from './AgreedColours';
import { AgreedSheet, type AgreedStart } from './AgreedSheet';
import { ColourKey } from './ColourKey';
import { placesOf, zoneOfPlace } from './placeNames';
import { ReadingSheet } from './ReadingSheet';
import { SpotCard } from './SpotCard';
import { seriesOfSpot } from './seriesOfSpot';
import '../parts/plainTable.css';
import '../parts/reasons.css';
import './colour.css';

const words = w.colour;

/** Colour as instruments read it: agreed colours, and each spot against them and against its reading before. */
export function ColourScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const readings = useQuestion(thingsOf(desk, 'reading', sculpture));
  const agreed = useQuestion(thingsOf(desk, 'agreedColour', sculpture));
  const sentinels = useQuestion(thingsOf(desk, 'sentinel', sculpture));
  if (record === null) return <NotHere />;
  if (!record || !readings || !agreed || !sentinels) return <Reading />;
  return <Colours record={record} readings={readings} agreed={agreed} sentinels={sentinels} />;
}

interface ColoursProps {
  readonly record: SculptureRecord;
  readonly readings: readonly Thing<'reading'>[];
  readonly agreed: readonly Thing<'agreedColour'>[];
  readonly sentinels: readonly Thing<'sentinel'>[];
}

/** What is being written down. */
type Open =
  | { readonly sheet: 'reading'; readonly spot?: Spot; readonly reading?: Thing<'reading'> }
  | { readonly sheet: 'agreed'; readonly agreed?: Thing<'agreedColour'>; readonly start?: AgreedStart };

function Colours({ record, readings, agreed, sentinels }: ColoursProps) {
  const desk = useDesk();
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const [open, setOpen] = useState<Open>();
  const { thing, body } = record.sculpture;
  const places = placesOf(record, sentinels);
  const spots = spotsOf(readings);
  const doneAt = (zone: string | undefined) =>
    record.treatments.filter(({ body }) => body.zones.length === 0 || (zone && body.zones.includes(zone)));
  const rowsOf = (spot: Spot) => seriesOfSpot(spot, agreed, record.treatments, zoneOfPlace(places, spot.about));
  const close = () => setOpen(undefined);
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.sculpture(thing), label: body.title || w.sculptures.untitled }}
      actions={
        mayWrite && (
          <Button kind="main" icon={<AddIcon />} onClick={() => setOpen({ sheet: 'reading' })}>
            {words.addReading}
          </Button>
        )
      }
    >
      <Notice title={words.noPhotos}>
        <p>{words.noPhotosWhat}</p>
        <div className="row not-printed">
          <LinkButton kind="quiet" to={pathTo.compare(thing)}>
            {words.toCompare}
          </LinkButton>
        </div>
      </Notice>
      {spots.length === 0 ? (
        <EmptyState title={words.none}>
          <p>{words.noneWhat}</p>
        </EmptyState>
      ) : (
        <Section title={words.spots} lead={words.spotsLead}>
          <LongList
            rows={spots}
            className="colour-spots"
            show={(spot) => (
              <li key={spot.key}>
                <SpotCard
                  spot={spot}
                  rows={rowsOf(spot)}
                  places={places}
                  done={doneAt(zoneOfPlace(places, spot.about))}
                  mayWrite={mayWrite}
                  onRead={() => setOpen({ sheet: 'reading', spot })}
                  onAgree={() => setOpen({ sheet: 'agreed', start: startFrom(spot, zoneOfPlace(places, spot.about)) })}
                  onEdit={(reading) => setOpen({ sheet: 'reading', reading })}
                />
              </li>
            )}
          />
        </Section>
      )}
      <AgreedColours
        agreed={agreed}
        places={places}
        onAdd={mayWrite ? () => setOpen({ sheet: 'agreed' }) : undefined}
        onEdit={mayWrite ? (row) => setOpen({ sheet: 'agreed', agreed: row }) : undefined}
      />
      <ColourKey />
      <PrintRow how={pathTo.method()} />
      {open?.sheet === 'reading' && (
        <ReadingSheet
          sculpture={thing}
          places={places}
          spots={spots}
          agreed={agreed}
          reading={open.reading}
          spot={open.spot}
          onClose={close}
        />
      )}
      {open?.sheet === 'agreed' && (
        <AgreedSheet sculpture={thing} places={places} agreed={open.agreed} start={open.start} onClose={close} />
      )}
    </Page>
  );
}

/** The last reading of a spot as a colour to agree on. */
const startFrom = ({ readings }: Spot, zone: string | undefined): AgreedStart | undefined => {
  const last = readings.at(-1)?.body;
  if (!last) return undefined;
  const { date, illuminant, observer, geometry, aperture } = last;
  const { mean } = meanReading(last.values);
  const tenth = (figure: number) => Math.round(figure * 100) / 100;
  const value = { L: tenth(mean.L), a: tenth(mean.a), b: tenth(mean.b) };
  return { date, illuminant, observer, geometry, aperture, zone, value };
};
