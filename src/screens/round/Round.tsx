import { reopenRound, roundView, type ZoneOnWalk } from '../../actions';
import { roundTypes } from '../../engine/trade';
import { date, sayReason, w } from '../../words';
import { Button, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { pathTo, say, useDesk, useQuestion } from '../shell';
import { FromPaper } from './FromPaper';
import { RoundMissing } from './RoundMissing';
import { StandingMark } from './StandingMark';
import { UndoButton } from './UndoButton';
import './round.css';

const words = w.round.walk;

export const typeName = (id: string): string => roundTypes.find((type) => type.id === id)?.name ?? id;

/** Where was I: every zone in walking order with its answer, and the way on. */
export function RoundScreen({ round }: { readonly round: string }) {
  const desk = useDesk();
  const view = useQuestion(roundView(desk, round));
  if (view === undefined) return <Reading />;
  if (view === null) return <RoundMissing />;
  const { body } = view.round;
  const { sculpture } = view;
  const next = view.walk.find(({ zone }) => zone.thing === view.goOnWith)?.zone;
  const reopen = async () => {
    const outcome = await reopenRound(desk, round);
    say(outcome.ok ? words.openedAgain : sayReason(outcome.reason));
  };
  return (
    <Page
      title={sculpture.body.title}
      over={words.over(typeName(body.type), date(body.date))}
      lead={words.progress(view.answered, view.walk.length)}
      back={{ to: pathTo.sculpture(sculpture.thing), label: words.back }}
      actions={
        <>
          <UndoButton round={round} undo={view.undo} />
          <LinkButton to={pathTo.endRound(round)} kind={next ? 'plain' : 'main'} size="big">
            {words.toEnd}
          </LinkButton>
          {next && !body.ended && (
            <LinkButton to={pathTo.zoneInRound(round, next.thing)} kind="main" size="big">
              {words.goOn(next.body.letter)}
            </LinkButton>
          )}
        </>
      }
    >
      <FromPaper round={view.round} />
      {view.personChecks.length > 0 && (
        <Notice kind="stop" title={w.round.end.people}>
          <ul className="cautions">
            {view.personChecks.map((check) => (
              <li key={check.thing}>{check.body.what}</li>
            ))}
          </ul>
          <p className="strong">{w.round.zone.people}</p>
        </Notice>
      )}
      {body.ended && (
        <Notice
          title={words.closed}
          actions={
            <Button size="round" onClick={reopen}>
              {words.reopen}
            </Button>
          }
        />
      )}
      <Section title={words.zones}>
        <ol className="bare walk">
          {view.walk.map((at) => (
            <WalkRow key={at.zone.thing} at={at} round={round} here={at.zone.thing === view.goOnWith} />
          ))}
        </ol>
      </Section>
    </Page>
  );
}

interface WalkRowProps {
  readonly at: ZoneOnWalk;
  readonly round: string;
  readonly here: boolean;
}

function WalkRow({ at, round, here }: WalkRowProps) {
  const { letter, name } = at.zone.body;
  return (
    <li>
      <LinkButton to={pathTo.zoneInRound(round, at.zone.thing)} size="round" kind={here ? 'main' : 'plain'} wide>
        <span className="walk-row">
          <span className="walk-letter">{letter}</span>
          <span className="walk-name">{name}</span>
          <span className="walk-standing">
            <StandingMark standing={at.standing} />
            {words.standing[at.standing]}
          </span>
        </span>
      </LinkButton>
    </li>
  );
}
