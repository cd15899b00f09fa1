import { useMemo } from 'react';
import { mapDraft, sculptureRecordOf, type ZoneMap, zoneMapOf } from '../../actions';
import { type SculptureRecord, zonesAt } from '../../engine/record';
import { w } from '../../words';
import { EmptyState, LinkButton, Page, Reading } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { DrawingBoard } from './DrawingBoard';
import './mapTable.css';
import './zoneMap.css';
import './drawing.css';

const words = w.zoneMap;

interface OutlineScreenProps {
  readonly sculpture: string;
  readonly elevation: string;
}

/** Drawing the zones on the picture of one side, by touches. */
export function OutlineScreen({ sculpture, elevation }: OutlineScreenProps) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const map = useQuestion(zoneMapOf(desk, sculpture));
  const draft = useQuestion(mapDraft(desk, elevation));
  if (record === undefined || map === undefined || draft === undefined) return <Reading>{words.reading}</Reading>;
  if (record === null) return <NotHere />;
  const side = map.sides.find((one) => one.elevation.thing === elevation);
  if (!side)
    return (
      <EmptyState
        page
        title={words.notHere}
        actions={<LinkButton to={pathTo.map(sculpture)}>{words.outline.done}</LinkButton>}
      />
    );
  return (
    <Page
      title={words.sideNamed(side.elevation.body.side)}
      over={words.outline.title}
      back={{ to: pathTo.map(sculpture, elevation), label: words.outline.done }}
    >
      <Zones record={record} map={map} side={side} draft={draft} />
    </Page>
  );
}

interface ZonesProps {
  readonly record: SculptureRecord;
  readonly map: ZoneMap;
  readonly side: ZoneMap['sides'][number];
  readonly draft: Parameters<typeof DrawingBoard>[0]['draft'];
}

function Zones({ record, map, side, draft }: ZonesProps) {
  const today = useDesk().today();
  const zones = useMemo(() => zonesAt(record, today), [record, today]);
  if (zones.length === 0)
    return (
      <EmptyState
        title={words.noZones}
        actions={<LinkButton to={pathTo.zones(record.sculpture.thing)}>{words.toZones}</LinkButton>}
      >
        <p>{words.noZonesWhat}</p>
      </EmptyState>
    );
  return <DrawingBoard title={record.sculpture.body.title} zones={zones} map={map} side={side} draft={draft} />;
}
