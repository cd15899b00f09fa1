import { setSetting, settings } from '../../actions';
import { tongues } from '../../words';
import { Button } from './Button';

/** Each in its own words: who cannot read the present one finds hers. */
export const tongueNames: Readonly<Record<(typeof tongues)[number], string>> = {
  'en-GB': 'English',
  'en-US': 'English (US)',
  'de-DE': 'Deutsch',
};

/** Everything entered is kept with each touch, so that beginning anew with the page loses nothing. */
export const speakFromNow = (tongue: (typeof tongues)[number]): void => {
  setSetting('tongue', tongue);
  location.reload();
};

/** The languages there are beside the present one, a touch each: for the first screen. */
export function TongueLinks() {
  const { tongue } = settings.get();
  return (
    <div className="row">
      {tongues
        .filter((one) => one !== tongue)
        .map((one) => (
          <Button key={one} kind="quiet" onClick={() => speakFromNow(one)}>
            <span lang={one}>{tongueNames[one]}</span>
          </Button>
        ))}
    </div>
  );
}
