import { isMoney } from '../../engine/money';
import type { Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { date, sayReason, unitOf, w } from '../../words';
import { Field, PhotosHere } from '../parts';
import { HoursEntry } from '../parts/HoursEntry';
import { MoneyField } from '../parts/MoneyField';
import { Select } from '../parts/Select';
import { useDesk } from '../shell';
import { costOf, type EntryFault, type EntryText } from './entryText';

const words = w.logbook;

interface MoreOfEntryProps {
  readonly sculpture: string;
  readonly text: EntryText;
  readonly onChange: (text: EntryText) => void;
  readonly readings: readonly Thing<'weather'>[];
  readonly campaigns: readonly Thing<'campaign'>[];
  readonly currency: string;
  readonly onCurrency: ((currency: string) => void) | undefined;
  /** Only once saving was tried. */
  readonly faults: ReadonlySet<EntryFault>;
  readonly tried: boolean;
}

/** Days, people, air, cost, what was taken away, what was not reached, photos: all may stay empty. */
export function MoreOfEntry(props: MoreOfEntryProps) {
  const { sculpture, text, onChange, readings, campaigns, currency, onCurrency, faults, tried } = props;
  const desk = useDesk();
  const set =
    <K extends keyof EntryText>(key: K) =>
    (value: EntryText[K]) =>
      onChange({ ...text, [key]: value });
  const cost = costOf(text, currency);
  const away =
    treatmentOf(text.type)?.takes === 'metal' || treatmentOf(text.type)?.breaksSeries || text.takenAway !== '';
  return (
    <div className="stack">
      <Field label={words.ended} kind="date" short value={text.ended} onChange={set('ended')} optional />
      <HoursEntry
        label={words.people}
        hint={words.peopleHint}
        people={text.people}
        onChange={set('people')}
        tried={tried}
        wrong={faults.has('hours')}
      />
      {(readings.length > 0 || text.weather) && (
        <Select
          label={words.air}
          value={text.weather}
          onChange={set('weather')}
          options={[
            { value: '', label: words.airNone },
            ...readings.map(({ thing, body }) => ({
              value: thing,
              label: words.airOf(date(body.date), body.time, w.careDay.says[body.said]),
            })),
          ]}
        />
      )}
      <MoneyField
        label={words.cost}
        value={text.cost}
        onChange={set('cost')}
        currency={currency}
        onCurrency={onCurrency}
        optional
        error={faults.has('cost') && cost && !isMoney(cost) ? sayReason(cost) : undefined}
      />
      {(campaigns.length > 0 || text.campaign) && (
        <Select
          label={words.campaign}
          value={text.campaign}
          onChange={set('campaign')}
          options={[
            { value: '', label: words.campaignNone },
            ...campaigns.map(({ thing, body }) => ({ value: thing, label: body.title })),
          ]}
        />
      )}
      {away && (
        <Field
          label={words.takenAway}
          hint={words.takenAwayHint}
          kind="number"
          short
          optional
          unit={unitOf('area')}
          value={text.takenAway}
          onChange={set('takenAway')}
          maxLength={8}
          error={faults.has('takenAway') ? words.numberWrong : undefined}
        />
      )}
      <Field label={words.left} value={text.left} onChange={set('left')} maxLength={1000} optional />
      <PhotosHere
        desk={desk}
        sculpture={sculpture}
        as="other"
        label={words.photosBefore}
        photos={text.photosBefore}
        onChange={set('photosBefore')}
      />
      <PhotosHere
        desk={desk}
        sculpture={sculpture}
        as="other"
        label={words.photosAfter}
        photos={text.photosAfter}
        onChange={set('photosAfter')}
      />
    </div>
  );
}
