import type { ReactNode } from 'react';
import type { Thing } from '../../engine/record';
import type { TripwireStanding } from '../../engine/watch';
import { date, type NameOfThing, w } from '../../words';
import { Button } from '../parts';
import { WireLine } from './WireLine';

const words = w.decisions;

const person = ({ role, name }: { readonly role: string; readonly name?: string | undefined }): string =>
  name ? `${name}, ${role}` : role;

interface DecisionCardProps {
  readonly decision: Thing<'decision'>;
  /** Where it speaks of one work among many. */
  readonly work: string | undefined;
  readonly option: string | undefined;
  /** Undefined while its figures are worked out. */
  readonly standing: readonly TripwireStanding[];
  readonly answers: readonly Thing<'tripwireAnswer'>[];
  readonly names: NameOfThing;
  /** Missing where it was replaced. */
  readonly onEdit?: () => void;
  readonly onAnew?: () => void;
  readonly onAnswer?: (row: TripwireStanding) => void;
}

/** One decision as it was taken, and what is watched of it. */
export function DecisionCard(props: DecisionCardProps) {
  const { decision, work, option, standing, answers, names, onEdit, onAnew, onAnswer } = props;
  const { body } = decision;
  return (
    <article className="card stack decision" aria-label={body.title}>
      <header>
        <p className="small soft">{[work, words.decided(date(body.date))].filter(Boolean).join(' · ')}</p>
        <h3>{body.title}</h3>
      </header>
      <dl className="decided">
        <Part title={words.chosen}>
          {option && <p className="strong">{option}</p>}
          <p>{body.chosen}</p>
        </Part>
        {body.refused.length > 0 && (
          <Part title={words.refused}>
            <ul>
              {body.refused.map(({ what, why }) => (
                <li key={`${what} ${why}`}>
                  <span className="strong">{what}:</span> {why}
                </li>
              ))}
            </ul>
          </Part>
        )}
        {body.evidence.length > 0 && (
          <Part title={words.evidence}>
            <ul>
              {body.evidence.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </Part>
        )}
        {body.consulted.length > 0 && <Part title={words.consulted}>{body.consulted.map(person).join('; ')}</Part>}
        {body.dissent && <Part title={words.dissent}>{body.dissent}</Part>}
        <Part title={words.signed}>
          {body.signed.length > 0
            ? body.signed.map((one) => words.signedBy(person(one), date(one.on))).join('; ')
            : words.notSigned}
        </Part>
      </dl>
      {body.note && <p>{body.note}</p>}
      <div className="stack tight">
        <h4>{words.wires}</h4>
        {body.tripwires.length === 0 && <p className="soft">{words.noWires}</p>}
        <ul className="bare wires">
          {body.tripwires.map((wire) => (
            <WireLine
              key={wire.id}
              wire={wire}
              row={standing.find((one) => one.decision.thing === decision.thing && one.tripwire.id === wire.id)}
              watched={body.replacedBy === undefined}
              answers={answers.filter((one) => one.body.decision === decision.thing && one.body.tripwire === wire.id)}
              names={names}
              onAnswer={onAnswer}
            />
          ))}
        </ul>
      </div>
      {!body.replacedBy && <p className="soft">{body.review ? words.review(date(body.review)) : words.noReview}</p>}
      {(onEdit || onAnew) && (
        <div className="row not-printed">
          {onAnew && (
            <Button onClick={onAnew} aria-label={words.anewOf(body.title)}>
              {words.anew}
            </Button>
          )}
          {onEdit && (
            <Button kind="quiet" onClick={onEdit} aria-label={words.editOf(body.title)}>
              {words.edit}
            </Button>
          )}
        </div>
      )}
    </article>
  );
}

function Part({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{title}</dt>
      <dd>{children}</dd>
    </div>
  );
}
