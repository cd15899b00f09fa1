import { useMemo } from 'react';
import { sculptureRecordOf, type ZoneMap, zoneMapOf } from '../../actions';
import { latestRound, type SculptureRecord, zonesAt } from '../../engine/record';
import { w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { MapOfWork } from './MapOfWork';
import { RunOffList } from './RunOffList';
import '../parts/plainTable.css';
import './mapTable.css';
import './zoneMap.css';

const words = w.zoneMap;

interface ZoneMapScreenProps {
  readonly sculpture: string;
  /** The side to begin with; the first where it is left out or no more there. */
  readonly elevation: string | undefined;
}

/** The zones of a work on its sides, coloured and hatched by what they show. */
export function ZoneMapScreen({ sculpture, elevation }: ZoneMapScreenProps) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const map = useQuestion(zoneMapOf(desk, sculpture));
  if (record === undefined || map === undefined) return <Reading>{words.reading}</Reading>;
  if (record === null) return <NotHere />;
  const { body } = record.sculpture;
  const title = body.title || w.sculptures.untitled;
  return (
    <Page
      title={words.title}
      over={workName({ body }) || title}
      lead={words.lead}
      back={{ to: pathTo.sculpture(sculpture), label: title }}
    >
      <Drawn record={record} map={map} title={title} elevation={elevation} />
    </Page>
  );
}

interface DrawnProps {
  readonly record: SculptureRecord;
  readonly map: ZoneMap;
  readonly title: string;
  readonly elevation: string | undefined;
}

function Drawn({ record, map, title, elevation }: DrawnProps) {
  const today = useDesk().today();
  const zones = useMemo(() => zonesAt(record, today), [record, today]);
  const { thing } = record.sculpture;
  if (zones.length === 0)
    return (
      <EmptyState
        title={words.noZones}
        actions={
          <LinkButton to={pathTo.zones(thing)} kind="main">
            {words.toZones}
          </LinkButton>
        }
      >
        <p>{words.noZonesWhat}</p>
      </EmptyState>
    );
  return (
    <>
      <MapOfWork
        record={record}
        zones={zones}
        map={map}
        title={title}
        elevation={elevation}
        latest={latestRound(record)?.thing}
      />
      <RunOffList runOffs={map.runOffs} zones={zones} />
      <PrintRow how={pathTo.method()} />
    </>
  );
}
