import { useState } from 'react';
import { setPlanned } from '../../actions';
import { type ItemState, paperStanding } from '../../engine/campaign';
import { type BodyOf, idPart, nameOf } from '../../engine/record';
import type { PaperItem, PaperOf } from '../../engine/trade';
import { w } from '../../words';
import { Button, Choice, Notice } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk } from '../shell';
import type { OpenFile } from './OfCampaign';
import { PaperLetter } from './PaperLetter';
import { PaperPlaceSheet } from './PaperPlaceSheet';
import { PaperSources } from './PaperSources';

const words = w.campaign.papers;
const states = Object.keys(words.states) as ItemState[];

interface PaperCheckProps {
  readonly file: OpenFile;
  readonly of: PaperOf;
  /** Whose proposal; undefined: the one paper of its sort. */
  readonly bid: string | undefined;
}

type Items = BodyOf<'completeness'>['items'];

/** What was entered, with what was touched since: a line keeps its place and what else it says. */
const withMarks = (items: Items, marks: Readonly<Record<string, ItemState>>): Items => [
  ...items.map((item) => ({ ...item, state: marks[item.id] ?? item.state })),
  ...Object.entries(marks).flatMap(([id, state]) => (items.some((item) => item.id === id) ? [] : [{ id, state }])),
];

/** A line that says where; said as nothing, it says no more where. */
const withPlace = ({ where: _, ...item }: Items[number], where: string): Items[number] =>
  (where === '' ? item : { ...item, where }) as Items[number];

/** Line by line: there, missing or not needed. Each touch is kept at once. */
export function PaperCheck({ file, of, bid }: PaperCheckProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const [letter, setLetter] = useState(false);
  const [place, setPlace] = useState<PaperItem>();
  // Touched just now and perhaps not yet read back: the next touch must not write over it.
  const [marks, setMarks] = useState<Readonly<Record<string, ItemState>>>({});
  const { campaign, planned, today } = file;
  const name = nameOf.completeness(campaign.thing, of, bid ? idPart(bid) : 'own');
  const entered = planned.completeness.find(({ thing }) => thing === name)?.body;
  const bodyWith = (items: Items): BodyOf<'completeness'> => ({
    ...entered,
    sculpture: campaign.body.sculpture,
    campaign: campaign.thing,
    of,
    bid,
    items,
    date: today,
  });
  const items = withMarks(entered?.items ?? [], refused ? {} : marks);
  const standing = paperStanding(of, items.length > 0 ? bodyWith(items) : undefined);
  const keep = (patch: Partial<BodyOf<'completeness'>>, said?: string) =>
    run(
      () => setPlanned(desk, 'completeness', name, { ...bodyWith(items), ...patch }),
      () => said && say(said),
    );
  const mark = (id: string, state: ItemState) => {
    setMarks({ ...marks, [id]: state });
    return keep({ items: withMarks(items, { [id]: state }) });
  };
  if (letter)
    return (
      <PaperLetter
        refused={refused}
        file={file}
        of={of}
        to={file.planned.bid.find(({ thing }) => thing === bid)?.body.who ?? entered?.from}
        missing={standing.missing}
        sent={entered?.letterSent}
        onSent={() => void keep({ letterSent: today }, words.sentSaid)}
        onBack={() => setLetter(false)}
      />
    );
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <Notice
        kind={standing.whole ? 'note' : 'caution'}
        title={words.standing(standing.missing.length, standing.unseen)}
      >
        <Reasons reasons={standing.reasons.filter(({ code }) => code !== 'campaign: paper lacks')} />
      </Notice>
      <ol className="bare paper-rows">
        {standing.rows.map(({ item, state, where }, i) => (
          <li key={item.id}>
            <Choice
              label={`${i + 1}. ${item.name}`}
              hint={item.means}
              tiles="narrow"
              options={states.map((value) => ({ value, label: words.states[value] }))}
              value={state}
              onChange={(value) => void mark(item.id, value)}
            />
            {where && <p className="small soft">{words.where(where)}</p>}
            {state && state !== 'not asked' && (
              <div className="not-printed">
                <Button kind="quiet" aria-label={words.sayWhere(item.name)} onClick={() => setPlace(item)}>
                  {words.sayWhereShort}
                </Button>
              </div>
            )}
          </li>
        ))}
      </ol>
      <PaperSources of={of} />
      <div className="row not-printed">
        <Button kind="main" onClick={() => setLetter(true)}>
          {words.toLetter}
        </Button>
      </div>
      <PrintRow />
      {place && (
        <PaperPlaceSheet
          item={place}
          about={name}
          where={items.find(({ id }) => id === place.id)?.where ?? ''}
          keep={(where) =>
            setPlanned(
              desk,
              'completeness',
              name,
              bodyWith(items.map((each) => (each.id === place.id ? withPlace(each, where) : each))),
            )
          }
          onClose={() => setPlace(undefined)}
        />
      )}
    </>
  );
}
