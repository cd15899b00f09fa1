import { useState } from 'react';
import { editPlanned } from '../../actions';
import type { BidComparison } from '../../engine/campaign';
import type { Thing } from '../../engine/record';
import { date, list, w } from '../../words';
import { Button, LinkButton, Notice } from '../parts';
import { Reasons } from '../parts/Reasons';
import { pathTo, say, useDeed, useDesk } from '../shell';
import { DecidedSheet } from './DecidedSheet';
import type { OpenFile } from './OfCampaign';
import { scorerText } from './scorerText';

const words = w.campaign.bids;

interface BidCardsProps {
  readonly file: OpenFile;
  readonly bids: readonly Thing<'bid'>[];
  readonly compared: readonly BidComparison[];
  readonly onEdit: (bid: Thing<'bid'>) => void;
}

/** Each bid by itself: its days, what it lacks, whether it was taken. */
export function BidCards({ file, bids, compared, onEdit }: BidCardsProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const { thing, body } = file.campaign;
  const [deciding, setDeciding] = useState(false);
  const { takenBy, takenOn, takenWhy } = body;
  const take = (bid: Thing<'bid'> | undefined) =>
    run(
      () =>
        editPlanned(desk, 'campaign', thing, {
          takenBid: bid?.thing,
          ...{ takenBy: undefined, takenOn: undefined, takenWhy: undefined },
        }),
      () => say(bid ? words.takenSaid(bid.body.who) : words.untakenSaid),
    );
  const takenBid = bids.find((bid) => bid.thing === body.takenBid);
  const rowOf = (bid: string) => compared.flatMap((one) => one.bids).find((row) => row.bid.thing === bid);
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <ul className="bare bid-cards">
        {bids.map((bid) => {
          const { who, withdrawn, named, note } = bid.body;
          const row = rowOf(bid.thing);
          const taken = body.takenBid === bid.thing;
          return (
            <li key={bid.thing} className="card stack tight">
              <h3>
                {who} {taken && <span className="chip">{words.isTaken}</span>}
              </h3>
              <p>{withdrawn ? words.withdrawn(date(withdrawn)) : words.madeOn(date(bid.body.date))}</p>
              <Reasons reasons={row?.reasons ?? []} />
              {row && row.missing.length > 0 && (
                <p className="small">{words.missing(list(row.missing.map(({ name }) => name)))}</p>
              )}
              {named && named.length > 0 && (
                <p className="small">
                  {words.people(list(named.map(({ role, name }) => (name ? `${name} (${role})` : role))))}
                </p>
              )}
              {note && <p className="small">{note}</p>}
              {taken && (
                <p>
                  {takenBy
                    ? w.bidScores.decided(scorerText(takenBy), takenOn ? date(takenOn) : '')
                    : w.bidScores.nobodyDecided}
                  {takenWhy && <span className="line-detail">{takenWhy}</span>}
                </p>
              )}
              <div className="row not-printed">
                <Button kind="quiet" aria-label={words.edit(who)} onClick={() => onEdit(bid)}>
                  {words.change}
                </Button>
                <LinkButton kind="quiet" to={pathTo.completeness(thing, 'proposal')} label={words.proposal(who)}>
                  {words.proposalShort}
                </LinkButton>
                {taken && (
                  <Button kind="quiet" onClick={() => setDeciding(true)}>
                    {w.bidScores.decide}
                  </Button>
                )}
                {!withdrawn && (
                  <Button
                    kind="quiet"
                    disabled={busy}
                    aria-label={taken ? undefined : words.takeOf(who)}
                    onClick={() => void take(taken ? undefined : bid)}
                  >
                    {taken ? words.untake : words.take}
                  </Button>
                )}
              </div>
            </li>
          );
        })}
      </ul>
      {deciding && takenBid && (
        <DecidedSheet campaign={file.campaign} bid={takenBid.body} onClose={() => setDeciding(false)} />
      )}
    </>
  );
}
