import { useState } from 'react';
import { type BidComparison, criteriaOf, ofCampaign, type Scorer, scoreBids, sheetsOf } from '../../engine/campaign';
import type { Thing } from '../../engine/record';
import { fewestScorers, priceFormula } from '../../engine/trade';
import { currency as currencyWord, date, namesOfCampaign, number, sayReason, sourceSaid, w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { BidWeightsSheet } from './BidWeightsSheet';
import { BlankScoreSheet } from './BlankScoreSheet';
import { MarkSheet } from './MarkSheet';
import type { OpenFile } from './OfCampaign';
import { OpenSheetsSheet } from './OpenSheetsSheet';
import { ScoreTable } from './ScoreTable';
import { scorerText } from './scorerText';
import { WeightsTable } from './WeightsTable';

const words = w.bidScores;

interface BidScoresProps {
  readonly file: OpenFile;
  readonly bids: readonly Thing<'bid'>[];
  readonly compared: readonly BidComparison[];
}

/** How the bids are weighed, who marks, and what their sheets come to once they are open. */
export function BidScores({ file, bids, compared }: BidScoresProps) {
  const [open, setOpen] = useState<'weights' | 'early' | Scorer>();
  const body = ofCampaign(file, 'bidCriteria')[0]?.body;
  const criteria = criteriaOf(body);
  const standing = bids.filter((bid) => bid.body.withdrawn === undefined);
  const sheets = sheetsOf(body, criteria, ofCampaign(file, 'bidScore'), bids);
  const { standings, allIn } = sheets;
  const anyIn = standings.some(({ whole }) => whole);
  const shown = sheets.open && anyIn;
  const close = () => setOpen(undefined);
  return (
    <Section
      title={words.title}
      lead={words.lead}
      actions={
        <span className="not-printed">
          <Button onClick={() => setOpen('weights')}>{words.change}</Button>
        </span>
      }
    >
      <WeightsTable criteria={criteria} body={body} />
      <h3>{words.scorers}</h3>
      {standings.length === 0 && <p>{words.noScorers}</p>}
      <ul className="bare lines">
        {standings.map(({ scorer, sheet, missing, whole }) => (
          <li key={scorer.id} className="line row">
            <span className="grow">
              <span className="strong">{scorerText(scorer)}</span>
              <span className="soft line-detail">
                {!sheet
                  ? words.states.none
                  : whole
                    ? words.states.whole(date(sheet.handedIn ?? ''))
                    : sheet.handedIn
                      ? words.states.lacks(missing)
                      : words.states.begun(missing)}
              </span>
            </span>
            {!whole && standing.length > 0 && (
              <span className="not-printed">
                <Button aria-label={words.mark(scorerText(scorer))} onClick={() => setOpen(scorer)}>
                  {words.markShort}
                </Button>
              </span>
            )}
          </li>
        ))}
      </ul>
      {standing.length === 0 && <p>{words.noBids}</p>}
      {body?.opened && !allIn && (
        <Notice kind="caution" title={words.openedBy(body.opened.by, date(body.opened.on), body.opened.why ?? '')} />
      )}
      {!sheets.open && standings.length > 0 && standing.length > 0 && (
        <>
          <p className="soft">{words.closed}</p>
          {anyIn && (
            <div className="row not-printed">
              <Button kind="quiet" onClick={() => setOpen('early')}>
                {words.openEarly}
              </Button>
            </div>
          )}
          <BlankScoreSheet criteria={criteria} bids={standing} />
        </>
      )}
      {shown &&
        compared.map((comparison) => {
          const scoring = scoreBids(comparison, criteria, standings);
          return (
            <div key={comparison.currency} className="stack">
              <ScoreTable
                scoring={scoring}
                currency={currencyWord(comparison.currency)}
                taken={file.campaign.body.takenBid}
              />
              <Reasons reasons={scoring.reasons} />
              {scoring.bids.some(({ reasons }) => reasons.length > 0) && (
                <Notice kind="note" title={words.notAlike}>
                  <ul>
                    {scoring.bids.flatMap(({ bid, reasons }) =>
                      reasons.map((reason) => (
                        <li key={`${bid.thing} ${reason.params.bid}`}>
                          {words.alikeOf(bid.body.who, sayReason(reason, namesOfCampaign(file)))}
                        </li>
                      )),
                    )}
                  </ul>
                </Notice>
              )}
              <p className="small soft">{words.how(number(scoring.apart, 1), number(fewestScorers.value))}</p>
            </div>
          );
        })}
      <p className="small soft">{words.howPrice(sourceSaid(priceFormula.source))}</p>
      {open === 'weights' && <BidWeightsSheet file={file} bids={bids} body={body} sheets={sheets} onClose={close} />}
      {open === 'early' && body && <OpenSheetsSheet file={file} onClose={close} />}
      {open !== undefined && open !== 'weights' && open !== 'early' && (
        <MarkSheet
          file={file}
          scorer={open}
          criteria={criteria}
          bids={standing}
          sheet={standings.find(({ scorer }) => scorer.id === open.id)?.sheet}
          onClose={close}
        />
      )}
    </Section>
  );
}
