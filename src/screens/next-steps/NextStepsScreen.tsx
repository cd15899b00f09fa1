import { useMemo, useState } from 'react';
import { firmnessOf, needList, openPersonChecks, sculptureList, tripwiresMet } from '../../actions';
import { namesOfWorks, w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Select } from '../parts/Select';
import { TripwiresMet } from '../parts/TripwiresMet';
import { pathTo, UnderWay, useDesk, useQuestion } from '../shell';
import { HowFirm } from './HowFirm';
import { namesIn } from './namesIn';
import { PeopleFirst, peopleIn } from './PeopleFirst';
import { SculpturesInOrder } from './SculpturesInOrder';
import { ZonesInOrder } from './ZonesInOrder';
import '../parts/plainTable.css';
import './nextSteps.css';

const words = w.nextSteps;
const all = '';

/** People first, then the zones of all sculptures in order of need. */
export function NextStepsScreen() {
  const desk = useDesk();
  // While a figure is worked out anew this is the last whole list: a card must not vanish under the hand that touched it.
  const need = useQuestion(needList(desk));
  const firmness = useQuestion(firmnessOf(desk)) ?? null;
  const checks = useQuestion(openPersonChecks(desk));
  const works = useQuestion(sculptureList(desk));
  const tripwires = useQuestion(tripwiresMet(desk));
  const [only, setOnly] = useState(all);
  const needs = need?.needs;
  const names = useMemo(() => namesIn(works ?? [], needs ?? []), [works, needs]);
  if (!need || !checks || !works) {
    return (
      <Page title={words.title} lead={words.lead}>
        <Reading>{words.reading}</Reading>
      </Page>
    );
  }
  const shown = <T extends { readonly sculpture: string }>(rows: readonly T[]) =>
    rows.filter(({ sculpture }) => only === all || sculpture === only);
  const { order, noRound, workingOut } = need;
  const people = shown(peopleIn(order.people, checks));
  const nothing = order.zones.length === 0 && order.notRanked.length === 0 && people.length === 0;
  const options = works
    .map(({ thing, body }) => ({ value: thing, label: workName({ body }) }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }));
  return (
    <Page title={words.title} lead={words.lead}>
      {options.length > 1 && (
        <div className="not-printed">
          <Select
            label={words.onlySculpture}
            value={only}
            onChange={setOnly}
            options={[{ value: all, label: words.allSculptures }, ...options]}
          />
        </div>
      )}
      <UnderWay what="figures" />
      <div className="row not-printed">
        <LinkButton kind="quiet" to={pathTo.holds()}>
          {w.holds.link}
        </LinkButton>
        <LinkButton kind="quiet" to={pathTo.due()}>
          {w.plan.due}
        </LinkButton>
      </div>
      {people.length > 0 && <PeopleFirst people={people} names={names} />}
      {tripwires && (
        <TripwiresMet
          open={tripwires.open.filter(({ decision }) => only === all || decision.body.sculpture === only)}
          names={namesOfWorks(works, tripwires.zones)}
          to={pathTo.decisions(only === all ? undefined : only)}
        />
      )}
      {nothing ? (
        workingOut === 0 && (
          <EmptyState
            title={words.empty}
            actions={<LinkButton to={pathTo.sculptures()}>{words.toSculptures}</LinkButton>}
          />
        )
      ) : (
        <>
          <ZonesInOrder
            ranks={shown(order.zones)}
            notRanked={shown(order.notRanked)}
            needs={need.needs}
            names={names}
            firmness={firmness}
          />
          {only === all && order.sculptures.length > 1 && (
            <SculpturesInOrder ranks={order.sculptures} needs={need.needs} names={names} />
          )}
          <HowFirm order={order} needs={need.needs} firmness={firmness} />
        </>
      )}
      {noRound.length > 0 && only === all && !nothing && (
        <p className="soft">{words.noRound(noRound.map((work) => names(work) ?? work))}</p>
      )}
      {!nothing && <PrintRow how={pathTo.method()} />}
    </Page>
  );
}
