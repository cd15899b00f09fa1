import { closeRound, type RoundView, reopenRound, roundView, sinceCarried } from '../../actions';
import { date, w } from '../../words';
import { Button, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { AskAgain } from './AskAgain';
import { EyeInvite } from './EyeInvite';
import { FromPaper } from './FromPaper';
import { typeName } from './Round';
import { RoundMissing } from './RoundMissing';
import { RoundMissingParts } from './RoundMissingParts';
import { RoundResult } from './RoundResult';
import { UndoButton } from './UndoButton';
import './round.css';

const words = w.round.end;

/** The end of the walk: three zones once more, then what is missing, the index, what changed, and carrying it out. */
export function EndRoundScreen({ round }: { readonly round: string }) {
  const desk = useDesk();
  const view = useQuestion(roundView(desk, round));
  if (view === undefined) return <Reading />;
  if (view === null) return <RoundMissing />;
  const { body } = view.round;
  return (
    <Page
      title={words.title}
      over={`${view.sculpture.body.title}. ${w.round.walk.over(typeName(body.type), date(body.date))}`}
      back={{ to: pathTo.round(round), label: w.round.walk.zones }}
      actions={view.again ? undefined : <EndActions round={round} view={view} />}
    >
      {view.again ? (
        <AskAgain round={round} asked={view.again} undo={view.undo} />
      ) : (
        <Summary round={round} view={view} />
      )}
    </Page>
  );
}

interface OfRound {
  readonly round: string;
  readonly view: RoundView;
}

function EndActions({ round, view }: OfRound) {
  const desk = useDesk();
  const { run } = useDeed();
  const ended = view.round.body.ended;
  return (
    <>
      <UndoButton round={round} undo={view.undo} />
      {ended ? (
        <>
          <Button
            size="big"
            onClick={() =>
              void run(
                () => reopenRound(desk, round),
                () => say(w.round.walk.openedAgain),
              )
            }
          >
            {w.round.walk.reopen}
          </Button>
          <LinkButton to={pathTo.carry()} kind="main" size="big">
            {words.carry}
          </LinkButton>
        </>
      ) : (
        <Button
          kind="main"
          size="big"
          onClick={() =>
            void run(
              () => closeRound(desk, round),
              () => say(words.closed),
            )
          }
        >
          {words.close}
        </Button>
      )}
    </>
  );
}

function Summary({ round, view }: OfRound) {
  const { body } = view.round;
  const since = useQuestion(sinceCarried(useDesk()));
  return (
    <>
      <FromPaper round={view.round} />
      {view.personChecks.length > 0 && (
        <Notice kind="stop" title={words.people}>
          <ul className="cautions">
            {view.personChecks.map((check) => (
              <li key={check.thing}>{check.body.what}</li>
            ))}
          </ul>
          <p className="strong">{w.round.zone.people}</p>
        </Notice>
      )}
      {body.ended && (
        <Notice title={words.closedOn(date(body.ended))}>
          <p>{words.carryWhat}</p>
          {since && since.rounds > 1 && <p>{w.keeping.carriedSince(since.rounds)}</p>}
        </Notice>
      )}
      <Section title={words.missing}>
        <RoundMissingParts view={view} />
      </Section>
      <RoundResult round={round}>
        <EyeInvite surveyor={body.surveyor} />
      </RoundResult>
    </>
  );
}
