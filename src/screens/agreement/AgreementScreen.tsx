import { useMemo } from 'react';
import { useLocation } from 'wouter';
import { sculptureRecordOf, surveyors } from '../../actions';
import { agreementOf, type DoneTwice, roundsDoneTwice } from '../../engine/agreement';
import type { SculptureRecord } from '../../engine/record';
import { date, type NameOfThing, thingNames, w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { Select } from '../parts/Select';
import { pathTo, useDesk, useQuestion } from '../shell';
import { AgreedFigures } from './AgreedFigures';
import { AgreedInShort } from './AgreedInShort';
import { WhereApart } from './WhereApart';
import '../parts/plainTable.css';

const words = w.agreement;

interface AgreementScreenProps {
  readonly sculpture: string;
  readonly one?: string | undefined;
  readonly other?: string | undefined;
}

/** A round done twice by two people: how far they agree, and where to look together. */
export function AgreementScreen({ sculpture, one, other }: AgreementScreenProps) {
  const record = useQuestion(sculptureRecordOf(useDesk(), sculpture));
  return (
    <Page
      title={words.title}
      over={record ? workName(record.sculpture) : undefined}
      lead={words.lead}
      back={{ to: pathTo.sculpture(sculpture), label: words.back }}
    >
      {record === undefined ? (
        <Reading />
      ) : record === null ? (
        <EmptyState title={words.gone} />
      ) : (
        <Chosen record={record} one={one} other={other} />
      )}
    </Page>
  );
}

const keyOf = ({ one, other }: DoneTwice): string => `${one.thing} ${other.thing}`;

function Chosen({
  record,
  one,
  other,
}: { readonly record: SculptureRecord } & Omit<AgreementScreenProps, 'sculpture'>) {
  const [, go] = useLocation();
  const people = useQuestion(surveyors(useDesk()));
  const nameOf = useMemo(() => thingNames(record, people ?? []), [record, people]);
  const pairs = useMemo(() => roundsDoneTwice(record), [record]);
  const chosen = pairs.find((pair) => pair.one.thing === one && pair.other.thing === other) ?? pairs[0];
  if (!chosen) {
    return (
      <EmptyState title={words.none} actions={<LinkButton to={pathTo.carry()}>{words.toCarry}</LinkButton>}>
        {words.how}
      </EmptyState>
    );
  }
  const who = (name: string): string => nameOf(name) ?? words.someone;
  return (
    <>
      {pairs.length > 1 && (
        <div className="not-printed">
          <Select
            label={words.choose}
            value={keyOf(chosen)}
            onChange={(key) => {
              const pair = pairs.find((row) => keyOf(row) === key);
              if (pair) go(pathTo.agreement(record.sculpture.thing, pair.one.thing, pair.other.thing));
            }}
            options={pairs.map((pair) => ({ value: keyOf(pair), label: pairName(pair, who) }))}
          />
        </div>
      )}
      <Compared record={record} pair={chosen} nameOf={nameOf} who={who} />
      <PrintRow />
    </>
  );
}

const pairName = ({ one, other }: DoneTwice, who: (name: string) => string): string =>
  words.pair(date(one.body.date), who(one.body.surveyor), who(other.body.surveyor));

interface ComparedProps {
  readonly record: SculptureRecord;
  readonly pair: DoneTwice;
  readonly nameOf: NameOfThing;
  readonly who: (name: string) => string;
}

function Compared({ record, pair, nameOf, who }: ComparedProps) {
  const found = useMemo(() => agreementOf(record, pair.one.thing, pair.other.thing), [record, pair]);
  const [one, other] = [who(pair.one.body.surveyor), who(pair.other.body.surveyor)];
  return (
    <>
      <p className="strong">{pairName(pair, who)}</p>
      <AgreedInShort found={found} one={one} other={other} />
      <WhereApart found={found} one={one} other={other} nameOf={nameOf} />
      <AgreedFigures found={found} />
      <Reasons reasons={found.reasons} nameOf={nameOf} />
      <p className="soft small">{words.sources}</p>
    </>
  );
}
