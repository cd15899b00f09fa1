import { useState } from 'react';
import { type OpenPersonCheck, openPersonCheck } from '../../actions';
import type { PersonFirst } from '../../engine/condition';
import { kindOf } from '../../engine/trade';
import { date, type NameOfThing, sayReason, w } from '../../words';
import { Button, LinkButton, Section, StopIcon } from '../parts';
import { pathTo, say, useDesk } from '../shell';
import { CloseCheckSheet } from './CloseCheckSheet';

const words = w.nextSteps;

/** Something that could hurt someone: a check that stands open, or a finding no check was opened for. */
export interface Danger {
  readonly key: string;
  readonly sculpture: string;
  readonly zone?: string | undefined;
  readonly check?: OpenPersonCheck;
  readonly finding?: PersonFirst;
}

/** Every open check, whatever round it came from, then what was seen without one. */
export const peopleIn = (people: readonly PersonFirst[], checks: readonly OpenPersonCheck[]): readonly Danger[] => [
  ...checks.map((check) => ({ key: check.thing, sculpture: check.body.sculpture, zone: check.body.zone, check })),
  ...people
    .filter(({ check }) => check === undefined)
    .map((finding) => ({
      key: finding.finding ?? `${finding.sculpture} ${finding.zone}`,
      sculpture: finding.sculpture,
      zone: finding.zone,
      finding,
    })),
];

interface PeopleFirstProps {
  readonly people: readonly Danger[];
  readonly names: NameOfThing;
}

/** Stands above every list until a named person closes each. */
export function PeopleFirst({ people, names }: PeopleFirstProps) {
  const [closing, setClosing] = useState<OpenPersonCheck | undefined>();
  return (
    <Section title={words.people} lead={words.peopleWhat}>
      <ul className="bare stack">
        {people.map((danger) => (
          <li key={danger.key} className="danger">
            <StopIcon />
            <div className="stack tight grow">
              <h3>{words.keepAway}</h3>
              <p>{danger.check ? danger.check.body.what : danger.finding && sayReason(danger.finding.reason, names)}</p>
              <p className="soft small">
                {[danger.zone && names(danger.zone), names(danger.sculpture)].filter(Boolean).join(', ')}
                {danger.check && <> · {words.openedOn(date(danger.check.body.opened))}</>}
              </p>
              <div className="row not-printed">
                {danger.check && <Button onClick={() => setClosing(danger.check)}>{words.close}</Button>}
                {danger.finding && <OpenOne danger={danger.finding} />}
                <LinkButton kind="quiet" to={pathTo.sculpture(danger.sculpture)}>
                  {words.toSculpture}
                </LinkButton>
              </div>
            </div>
          </li>
        ))}
      </ul>
      {closing && <CloseCheckSheet check={closing} onClose={() => setClosing(undefined)} />}
    </Section>
  );
}

function OpenOne({ danger }: { readonly danger: PersonFirst }) {
  const desk = useDesk();
  const kind = String(danger.reason.params.kind ?? '');
  const open = async () => {
    const outcome = await openPersonCheck(desk, danger.sculpture, {
      what: kindOf(kind)?.name ?? kind,
      ...(danger.zone ? { zone: danger.zone } : {}),
      ...(danger.finding ? { finding: danger.finding } : {}),
    });
    say(outcome.ok ? words.opened : sayReason(outcome.reason));
  };
  return (
    <Button kind="danger" onClick={open}>
      {words.open}
    </Button>
  );
}
