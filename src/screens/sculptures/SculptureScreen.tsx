import { roundsUnderWay, type SculptureRow, sculptureList, sculptureRecordOf } from '../../actions';
import { type SculptureRecord, zonesAt } from '../../engine/record';
import { w } from '../../words';
import { LinkButton, Page, Reading } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { Elevations } from './Elevations';
import { Inserts } from './Inserts';
import { LastRound } from './LastRound';
import { OpenCheck } from './OpenCheck';
import { PastChecks } from './PastChecks';
import { PersonChecks } from './PersonChecks';
import { PhotoLinks } from './PhotoLinks';
import { RoundsOfWork } from './RoundsOfWork';
import { ThoughtOfWork } from './ThoughtOfWork';
import { WhatIsKnown } from './WhatIsKnown';
import { ZoneTable } from './ZoneTable';
import '../parts/lines.css';
import './sculpture.css';

const words = w.sculptures.work;

/** One work: dangers first, then its state at the last round, then what can be done, then what is known. */
export function SculptureScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const rows = useQuestion(sculptureList(desk));
  if (record === undefined) return <Reading />;
  if (record === null) return <NotHere />;
  return <Work record={record} row={rows?.find(({ thing }) => thing === sculpture)} />;
}

function Work({ record, row }: { readonly record: SculptureRecord; readonly row: SculptureRow | undefined }) {
  const desk = useDesk();
  const { thing, body } = record.sculpture;
  const zones = zonesAt(record, desk.today());
  const title = body.title || w.sculptures.untitled;
  return (
    <Page
      title={title}
      over={body.number}
      back={{ to: pathTo.sculptures(), label: words.back }}
      actions={<Acts sculpture={thing} zones={zones.length} />}
    >
      <PersonChecks titles={new Map([[thing, title]])} here />
      <div className="work-page">
        <Elevations sculpture={thing} title={title} />
        <LastRound row={row} record={record} />
      </div>
      <ZoneTable record={record} zones={zones} round={row?.summary?.round?.thing} />
      <div className="row not-printed">
        <LinkButton kind="quiet" to={pathTo.holds()}>
          {w.sculptures.toHolds}
        </LinkButton>
        <LinkButton kind="quiet" to={pathTo.planOfWork(thing)}>
          {w.plan.ofWork.title}
        </LinkButton>
        <LinkButton kind="quiet" to={pathTo.papersOf(thing)}>
          {w.paperHub.link}
        </LinkButton>
        <LinkButton kind="quiet" to={pathTo.incidents()}>
          {w.plan.report}
        </LinkButton>
      </div>
      <PhotoLinks sculpture={thing} />
      <RoundsOfWork record={record} />
      <Inserts record={record} />
      <WhatIsKnown record={record} />
      <ThoughtOfWork record={record} />
      <OpenCheck record={record} zones={zones} />
      <PastChecks record={record} />
    </Page>
  );
}

/** What can be done with the work, in the thumb's reach. */
function Acts({ sculpture, zones }: { readonly sculpture: string; readonly zones: number }) {
  const running = useQuestion(roundsUnderWay(useDesk()))?.find(({ round }) => round.body.sculpture === sculpture);
  if (zones === 0)
    return (
      <LinkButton to={pathTo.zones(sculpture)} kind="main" size="round">
        {words.addZones}
      </LinkButton>
    );
  return (
    <>
      <LinkButton to={pathTo.logbook(sculpture)} size="round">
        {words.logbook}
      </LinkButton>
      <LinkButton to={pathTo.thenAndNow(sculpture)} size="round">
        {words.thenAndNow}
      </LinkButton>
      <LinkButton to={pathTo.overTime(sculpture)} size="round">
        {w.overTime.link}
      </LinkButton>
      <LinkButton to={pathTo.look(sculpture)} size="round">
        {words.look}
      </LinkButton>
      {running ? (
        <LinkButton
          to={running.zone ? pathTo.zoneInRound(running.round.thing, running.zone) : pathTo.round(running.round.thing)}
          kind="main"
          size="round"
        >
          {words.goOn}
        </LinkButton>
      ) : (
        <LinkButton to={pathTo.startRound(sculpture)} kind="main" size="round">
          {words.startRound}
        </LinkButton>
      )}
    </>
  );
}
