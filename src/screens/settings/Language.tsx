import { setSetting, settings } from '../../actions';
import { tongues, w } from '../../words';
import { Choice, Section } from '../parts';
import { speakFromNow, tongueNames } from '../parts/TongueChoice';
import { useQuestion } from '../shell';

const words = w.settings;
const units = ['metric', 'us'] as const;

/** A day and a number as each way of writing has them, so that nobody must know its name. */
const example = (locale: string): string =>
  [
    new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
      Date.UTC(2026, 4, 12),
    ),
    new Intl.NumberFormat(locale).format(1234.5),
  ].join(', ');

/** Language, the way days and numbers are written, and the units. Each begins anew with the page: nothing entered is lost by it. */
export function Language() {
  const { tongue, units: chosen } = useQuestion(settings);
  return (
    <Section title={words.language}>
      <Choice
        label={words.tongue}
        options={tongues.map((value) => ({ value, label: tongueNames[value], detail: example(value) }))}
        value={tongue}
        onChange={speakFromNow}
      />
      <p className="soft">{words.notRead}</p>
      <Choice
        label={words.units}
        hint={words.unitsHint}
        options={units.map((value) => ({ value, label: words.unitNames[value], detail: words.unitDetails[value] }))}
        value={chosen}
        onChange={(value) => {
          setSetting('units', value);
          location.reload();
        }}
      />
    </Section>
  );
}
