import { useState } from 'react';
import { setPlanned } from '../../actions';
import { byHand, type Criterion, markOf, type Scorer, type ScoreSheet } from '../../engine/campaign';
import { nameOf, type Thing } from '../../engine/record';
import { mostMark } from '../../engine/trade';
import { date, typedNumber, w } from '../../words';
import { Button, Field, Notice, Sheet } from '../parts';
import { Tick } from '../parts/Tick';
import { say, useDeed, useDesk, useTyped } from '../shell';
import type { OpenFile } from './OfCampaign';
import { scorerText } from './scorerText';

const words = w.bidScores.markSheet;

interface MarkSheetProps {
  readonly file: OpenFile;
  readonly scorer: Scorer;
  readonly criteria: readonly Criterion[];
  /** Those that stand. */
  readonly bids: readonly Thing<'bid'>[];
  readonly sheet: ScoreSheet | undefined;
  readonly onClose: () => void;
}

const keyOf = (bid: string, criterion: string): string => `${bid} ${criterion}`;

/** One scorer's marks, bid by bid: nobody else's stand beside them. */
export function MarkSheet({ file, scorer, criteria, bids, sheet, onClose }: MarkSheetProps) {
  const desk = useDesk();
  const marked = byHand(criteria);
  const cells = bids.flatMap((bid) => marked.map((criterion) => ({ bid: bid.thing, criterion: criterion.id })));
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>(() =>
    Object.fromEntries(
      cells.map(({ bid, criterion }) => [keyOf(bid, criterion), String(markOf(sheet, bid, criterion) ?? '')]),
    ),
  );
  const [handIn, setHandIn] = useState(sheet?.handedIn !== undefined);
  const [note, setNote] = useState(sheet?.note ?? '');
  const [tried, setTried] = useState(false);
  const unkept = useTyped(['marks', file.campaign.thing, scorer.id], {
    texts: [texts, setTexts],
    handIn: [handIn, setHandIn],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(unkept);
  const markIn = (text: string): number | undefined => {
    const mark = typedNumber(text);
    return mark !== undefined && Number.isInteger(mark) && mark >= 0 && mark <= mostMark.value ? mark : undefined;
  };
  const textOf = (bid: string, criterion: string): string => texts[keyOf(bid, criterion)] ?? '';
  const isWrong = (text: string): boolean => text.trim() !== '' && markIn(text) === undefined;
  const keep = () => {
    setTried(true);
    if (cells.some(({ bid, criterion }) => isWrong(textOf(bid, criterion)))) return;
    const marks = cells.flatMap(({ bid, criterion }) => {
      const mark = markIn(textOf(bid, criterion));
      return mark === undefined ? [] : [{ bid, criterion, mark }];
    });
    // Marks of a bid that was withdrawn, or on a criterion that no longer counts, stay as they were given.
    const others = sheet?.marks.filter(
      (one) => !cells.some(({ bid, criterion }) => one.bid === bid && one.criterion === criterion),
    );
    const { sculpture } = file.campaign.body;
    const campaign = file.campaign.thing;
    const handedIn = handIn ? (sheet?.handedIn ?? desk.today()) : undefined;
    void run(
      () =>
        setPlanned(desk, 'bidScore', nameOf.bidScore(campaign, scorer.id), {
          ...{ ...sheet, sculpture, campaign, scorer: scorer.id, date: desk.today(), handedIn },
          ...{ marks: [...(others ?? []), ...marks], note: note.trim() || undefined },
        }),
      () => {
        say(handIn ? words.savedIn : words.saved);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.title(scorerText(scorer))}
      onClose={onClose}
      actions={
        <Button kind="main" onClick={keep} disabled={busy}>
          {words.save}
        </Button>
      }
    >
      {unkept.line}
      {refused && <Notice kind="problem" title={refused} />}
      <p className="hint">{words.hint}</p>
      {bids.map((bid) => (
        <fieldset key={bid.thing} className="choice stack">
          <legend>{bid.body.who}</legend>
          {marked.map(({ id, name, asks }) => {
            const text = textOf(bid.thing, id);
            return (
              <Field
                key={id}
                label={words.mark(bid.body.who, name)}
                hint={asks}
                kind="number"
                value={text}
                onChange={(typed) => setTexts({ ...texts, [keyOf(bid.thing, id)]: typed })}
                maxLength={3}
                short
                optional
                error={tried && isWrong(text) ? words.markWrong : undefined}
              />
            );
          })}
        </fieldset>
      ))}
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
      {sheet?.handedIn ? (
        <p>{words.fixed(date(sheet.handedIn))}</p>
      ) : (
        <Tick label={words.handIn} checked={handIn} onChange={setHandIn} />
      )}
    </Sheet>
  );
}
