import { useState } from 'react';
import { setPlanned } from '../../actions';
import { criteriaOf, type Sheets, sameCriteria } from '../../engine/campaign';
import { type BodyOf, nameOf, type Thing } from '../../engine/record';
import { bidCriteria, bidCriterionOf } from '../../engine/trade';
import { number, numberTyped, typedNumber, w } from '../../words';
import { AddIcon, Button, Field, Notice, Sheet, SheetActs } from '../parts';
import { PeopleEntry } from '../parts/PeopleEntry';
import { type PersonSaid, peopleKept, peopleWhole } from '../parts/peopleSaid';
import { say, useDeed, useDesk, useTyped } from '../shell';
import type { OpenFile } from './OfCampaign';

const words = w.bidScores.weightsSheet;

interface BidWeightsSheetProps {
  readonly file: OpenFile;
  readonly bids: readonly Thing<'bid'>[];
  readonly body: BodyOf<'bidCriteria'> | undefined;
  readonly sheets: Sheets;
  readonly onClose: () => void;
}

interface Row {
  readonly id: string;
  readonly name: string;
  readonly weight: string;
}

/** Weights and who marks. Once a bid is in, a change asks for its reason and is kept beside what was before. */
export function BidWeightsSheet({ file, bids, body, sheets, onClose }: BidWeightsSheetProps) {
  const desk = useDesk();
  const before = criteriaOf(body);
  const [rows, setRows] = useState<readonly Row[]>(() => {
    const unused = bidCriteria.filter(({ id }) => !before.some((one) => one.id === id));
    return [
      ...before.map(({ id, name, weight }) => ({ id, name, weight: numberTyped(weight) })),
      ...unused.map(({ id, name }) => ({ id, name, weight: '' })),
    ];
  });
  const [people, setPeople] = useState<readonly (PersonSaid & { readonly id?: string })[]>(body?.scorers ?? []);
  const [why, setWhy] = useState('');
  const [tried, setTried] = useState(false);
  const unkept = useTyped(['bid weights', file.campaign.thing], {
    rows: [rows, setRows],
    people: [people, setPeople],
    why: [why, setWhy],
  });
  const { run, refused, busy } = useDeed(unkept);
  const isWrong = ({ weight }: Row): boolean => {
    const typed = weight.trim() === '' ? 0 : typedNumber(weight);
    return typed === undefined || typed < 0 || typed > 100;
  };
  const criteria = rows.flatMap((row) => {
    const weight = typedNumber(row.weight);
    if (!weight || isWrong(row)) return [];
    return [bidCriterionOf(row.id) ? { id: row.id, weight } : { id: row.id, name: row.name.trim(), weight }];
  });
  const sum = criteria.reduce((all, { weight }) => all + weight, 0);
  const changes = bids.length > 0 && !sameCriteria(before, criteria);
  const change = (id: string, patch: Partial<Row>) =>
    setRows(rows.map((row) => (row.id === id ? { ...row, ...patch } : row)));
  const keep = () => {
    setTried(true);
    if (rows.some(isWrong) || !peopleWhole(people) || (changes && !why.trim())) return;
    const campaign = file.campaign.thing;
    const changed = changes
      ? [
          ...(body?.changed ?? []),
          {
            ...{ on: desk.today(), why: why.trim(), bids: bids.length },
            sheets: sheets.standings.filter(({ sheet }) => sheet?.handedIn).length,
            before: before.map(({ id, name, weight }) => (bidCriterionOf(id) ? { id, weight } : { id, name, weight })),
          },
        ]
      : body?.changed;
    void run(
      () =>
        setPlanned(desk, 'bidCriteria', nameOf.bidCriteria(campaign), {
          ...{ ...body, sculpture: file.campaign.body.sculpture, campaign, criteria, changed },
          date: body && sameCriteria(before, criteria) ? body.date : desk.today(),
          scorers: peopleKept(people).map((person) => ({ ...person, id: person.id ?? desk.newId() })),
        }),
      () => {
        say(words.saved);
        onClose();
      },
    );
  };
  const own = rows.filter(({ id }) => !bidCriterionOf(id));
  return (
    <Sheet
      open
      title={words.title}
      onClose={onClose}
      actions={<SheetActs save={words.save} onSave={keep} busy={busy} />}
    >
      {unkept.line}
      {refused && <Notice kind="problem" title={refused} />}
      <PeopleEntry label={words.scorers} hint={words.scorersHint} people={people} onChange={setPeople} tried={tried} />
      <fieldset className="choice stack">
        <legend>{w.bidScores.weights}</legend>
        <p className="hint">{words.sum(number(sum, 1))}</p>
        {rows.map((row) => {
          const at = own.indexOf(row) + 1;
          return (
            <div key={row.id} className="fields">
              {at > 0 && (
                <Field
                  label={words.own(at)}
                  value={row.name}
                  onChange={(name) => change(row.id, { name })}
                  maxLength={200}
                />
              )}
              <Field
                label={at > 0 ? words.ownWeight(at) : words.weight(row.name)}
                kind="number"
                value={row.weight}
                onChange={(weight) => change(row.id, { weight })}
                maxLength={6}
                short
                optional
                error={tried && isWrong(row) ? words.weightWrong : undefined}
              />
            </div>
          );
        })}
        <div className="row">
          <Button
            icon={<AddIcon />}
            onClick={() => setRows([...rows, { id: `own ${desk.newId()}`, name: '', weight: '' }])}
          >
            {words.addOwn}
          </Button>
        </div>
      </fieldset>
      {changes && (
        <Field
          label={words.why}
          hint={words.whyHint}
          kind="long"
          value={why}
          onChange={setWhy}
          maxLength={1000}
          error={tried && !why.trim() ? words.whyMissing : undefined}
        />
      )}
    </Sheet>
  );
}
