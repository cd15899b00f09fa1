import { roundsUnderWay } from '../../actions';
import { date, w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

/** Where she stopped: one touch and the round goes on at the zone that was open. */
export function RoundsUnderWay() {
  const rounds = useQuestion(roundsUnderWay(useDesk())) ?? [];
  return rounds.map(({ round, title, zone }) => (
    <Notice
      key={round.thing}
      title={w.sculptures.underWay(title)}
      actions={
        <LinkButton
          to={zone ? pathTo.zoneInRound(round.thing, zone) : pathTo.round(round.thing)}
          kind="main"
          size="round"
          label={w.sculptures.underWay(title)}
        >
          {w.sculptures.goOn}
        </LinkButton>
      }
    >
      <p>{w.sculptures.underWayWhat(date(round.body.date))}</p>
    </Notice>
  ));
}
