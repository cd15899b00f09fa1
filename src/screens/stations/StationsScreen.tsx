import { useState } from 'react';
import { addStations, type ShotList, shotList } from '../../actions';
import type { Thing } from '../../engine/record';
import { sides } from '../../engine/trade';
import { w, workName } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Notice, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { Squares } from './Squares';
import { StationLines } from './StationLines';
import { StationSheet } from './StationSheet';
import '../parts/lines.css';
import '../parts/plainTable.css';
import './stations.css';

const words = w.stations;

/** The spots a work is photographed from, and its sentinel squares. */
export function StationsScreen({ sculpture }: { readonly sculpture: string }) {
  const list = useQuestion(shotList(useDesk(), sculpture));
  if (list === undefined) return <Reading />;
  if (list === null) return <NotHere />;
  return <Stations list={list} />;
}

function Stations({ list }: { readonly list: ShotList }) {
  const [open, setOpen] = useState<Thing<'station'> | 'new'>();
  const { thing, body } = list.sculpture;
  const { stations } = list;
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={stations.length > 0 ? words.lead : undefined}
      back={{ to: pathTo.sculpture(thing), label: body.title || w.sculptures.untitled }}
      actions={
        stations.length > 0 && (
          <>
            <LinkButton to={pathTo.cards(thing)} size="round">
              {words.toCards}
            </LinkButton>
            <LinkButton to={pathTo.shots(thing)} size="round">
              {words.toShots}
            </LinkButton>
            <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setOpen('new')}>
              {words.add}
            </Button>
          </>
        )
      }
    >
      {stations.length === 0 ? (
        <NoneYet sculpture={thing} add={() => setOpen('new')} />
      ) : (
        <StationLines sculpture={thing} stations={stations} open={setOpen} />
      )}
      <Squares list={list} />
      {stations.length > 0 && <PrintRow />}
      {open && (
        <StationSheet
          sculpture={thing}
          station={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}

/** The four sides a first station stands on; from the north the camera looks south. */
const four = [0, 2, 4, 6].map((i) => ({ side: sides[i] ?? '', bearing: (i * 45 + 180) % 360 }));

function NoneYet({ sculpture, add }: { readonly sculpture: string; readonly add: () => void }) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const begin = () =>
    run(
      () =>
        addStations(
          desk,
          sculpture,
          four.map(({ side, bearing }) => ({ aim: words.fourAim, bearing, note: words.fourNote(side) })),
        ),
      () => say(words.beginFourDone),
    );
  return (
    <EmptyState
      title={words.emptyTitle}
      actions={
        <>
          <Button kind="main" size="round" disabled={busy} onClick={begin}>
            {words.beginFour}
          </Button>
          <Button size="round" icon={<AddIcon />} onClick={add}>
            {words.add}
          </Button>
        </>
      }
    >
      <p>{words.lead}</p>
      <p>{words.empty}</p>
      {refused && <Notice kind="problem" title={refused} />}
    </EmptyState>
  );
}
