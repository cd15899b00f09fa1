import { type RoundView, roundSetting } from '../../actions';
import { reasonsNotLooked } from '../../engine/trade';
import { midSentence, w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { ShotsMissing } from './ShotsMissing';
import { kindName } from './said';

const words = w.round.end;

/** What a reader must know before any number: zones without an answer, not looked at, carried; findings without a photo. */
export function RoundMissingParts({ view }: { readonly view: RoundView }) {
  const desk = useDesk();
  const record = useQuestion(roundSetting(desk, view.round.thing))?.record;
  const next = view.walk.find(({ zone }) => zone.thing === view.goOnWith)?.zone;
  const letters = new Map(view.walk.map(({ zone }) => [zone.thing, zone.body.letter]));
  const open = view.walk.filter(({ standing }) => standing === 'not yet' || standing === 'begun');
  const visits = record?.visits.filter(({ body }) => body.round === view.round.thing) ?? [];
  const notLooked = visits.filter(({ body }) => body.state === 'not looked');
  const carried = visits.filter(({ body }) => body.state === 'carried');
  const onPaper = view.round.body.fromPaper !== undefined;
  // Nobody stands before the work with a camera while cards are entered.
  const noPhoto =
    (onPaper ? undefined : record)?.findings.filter(
      ({ body }) =>
        body.round === view.round.thing && !body.cleared && !body.carriedFrom && (body.photos ?? []).length === 0,
    ) ?? [];
  const inPart = visits.filter(
    ({ body }) =>
      body.state === 'found' &&
      record?.findings.some((f) => f.body.round === body.round && f.body.zone === body.zone && f.body.carriedFrom),
  );
  const letter = (zone: string): string => letters.get(zone) ?? '';
  return (
    <div className="stack">
      {open.length > 0 && (
        <Notice
          kind="caution"
          title={words.zonesLeft(open.length)}
          actions={
            next && (
              <LinkButton to={pathTo.zoneInRound(view.round.thing, next.thing)} size="round" kind="main">
                {words.goOn(next.body.letter)}
              </LinkButton>
            )
          }
        >
          <p>{words.zonesLeftWhat}</p>
        </Notice>
      )}
      {notLooked.length > 0 && (
        <Listed
          title={words.notLooked(notLooked.length)}
          items={notLooked.map(
            ({ body }) => `${letter(body.zone)}: ${reasonsNotLooked.find((r) => r.id === body.reason)?.name ?? ''}`,
          )}
        />
      )}
      {carried.length > 0 && (
        <Listed title={words.carried(carried.length)} items={carried.map(({ body }) => letter(body.zone))} inline />
      )}
      {inPart.length > 0 && (
        <Listed title={words.inPart(inPart.length)} items={inPart.map(({ body }) => letter(body.zone))} inline />
      )}
      {noPhoto.length > 0 && (
        <Listed
          title={words.withoutPhoto(noPhoto.length)}
          items={noPhoto.map(({ body }) => `${letter(body.zone)}: ${midSentence(kindName(body.kind))}`)}
        />
      )}
      {open.length === 0 && notLooked.length === 0 && carried.length === 0 && inPart.length === 0 && (
        <p>{words.nothingMissing}</p>
      )}
      {!onPaper && <ShotsMissing sculpture={view.sculpture.thing} round={view.round.thing} />}
    </div>
  );
}

interface ListedProps {
  readonly title: string;
  readonly items: readonly string[];
  readonly inline?: boolean;
}

function Listed({ title, items, inline }: ListedProps) {
  return (
    <div>
      <h3>{title}</h3>
      {inline ? (
        <p>{items.join(', ')}</p>
      ) : (
        <ul className="listed">
          {items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
