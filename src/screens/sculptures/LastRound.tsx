import { type AskedRound, roundScore, type SculptureRow } from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { date, share, w, whole } from '../../words';
import { ClassBadge, FigureText, IndexDial, LinkButton } from '../parts';
import { noAnswer, pathTo, useDesk, useQuestion } from '../shell';
import { activeAreas } from './activeAreas';
import { roundTypeName } from './SculptureCard';

const words = w.sculptures.work;

interface LastRoundProps {
  readonly record: SculptureRecord;
  readonly row: SculptureRow | undefined;
}

/** What the last round came to: index with its range and parts, classes, share seen, weakest zone, active areas. */
export function LastRound({ record, row }: LastRoundProps) {
  const desk = useDesk();
  const summary = row?.summary;
  const asked = useQuestion(summary?.round ? roundScore(desk, summary.round.thing) : noAnswer);
  return (
    <section className="last-round card" aria-label={words.index}>
      <IndexDial
        size="large"
        of={record.sculpture.body.title}
        figure={summary?.index ?? null}
        note={summary?.round ? undefined : w.sculptures.notSurveyed}
      />
      {summary?.round && (
        <div className="stack tight">
          <p className="strong">
            {summary.round.ended
              ? w.sculptures.lastRound(roundTypeName(summary.round.type), date(summary.round.date))
              : w.sculptures.runningRound(date(summary.round.date))}
          </p>
          <p>{w.sculptures.seen(share(summary.seenShare))}</p>
          <p className="row">
            {summary.urgency !== null && <ClassBadge family="UC" level={summary.urgency} worded />}
            {summary.condition !== null && <ClassBadge family="CC" level={summary.condition} worded />}
            {summary.recommendation !== null && <ClassBadge family="RC" level={summary.recommendation} worded />}
          </p>
          {asked && <Parts asked={asked} />}
        </div>
      )}
    </section>
  );
}

function Parts({ asked: { score, record } }: { readonly asked: AskedRound }) {
  const weakest = record.zones.find(({ thing }) => thing === score.weakest?.zone);
  return (
    <>
      {weakest && <p>{words.weakest(weakest.body.letter, weakest.body.name)}</p>}
      {score.ifUnseenBest !== null && score.ifUnseenWorst !== null && score.seenShare < 1 && (
        <p className="small soft">{words.unseenBetween(whole(score.ifUnseenBest), whole(score.ifUnseenWorst))}</p>
      )}
      <dl className="areas">
        {activeAreas(score).map(([area, figure]) => (
          <div key={area}>
            <dt>{words.active[area]}</dt>
            <dd>
              <FigureText figure={figure} as="m2" />
            </dd>
          </div>
        ))}
      </dl>
      <p className="not-printed">
        <LinkButton to={pathTo.method()} kind="quiet">
          {words.method}
        </LinkButton>
      </p>
    </>
  );
}
