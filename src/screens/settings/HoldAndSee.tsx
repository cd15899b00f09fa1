import { setSetting, settings } from '../../actions';
import { w } from '../../words';
import { Choice, Section, Tick } from '../parts';
import { useQuestion } from '../shell';

const words = w.settings;
const themes = ['light', 'sun'] as const;
const hands = ['left', 'right'] as const;

/** Theme, hand, gloves, own eye first. Each holds as soon as it is touched. */
export function HoldAndSee() {
  const { theme, hand, gloves, wetGlass, ownEye, callAndTap } = useQuestion(settings);
  return (
    <Section title={words.hold}>
      <Choice
        label={words.theme}
        options={themes.map((value) => ({ value, label: words.themes[value], detail: words.themeDetails[value] }))}
        value={theme}
        onChange={(value) => setSetting('theme', value)}
      />
      <Choice
        label={words.hand}
        hint={words.handHint}
        options={hands.map((value) => ({ value, label: words.hands[value] }))}
        value={hand}
        onChange={(value) => setSetting('hand', value)}
      />
      <Tick
        label={words.gloves}
        detail={words.glovesWhat}
        checked={gloves}
        onChange={(value) => setSetting('gloves', value)}
      />
      <Tick
        label={w.field.glass.setting}
        detail={w.field.glass.settingWhat}
        checked={wetGlass}
        onChange={(value) => setSetting('wetGlass', value)}
      />
      <Tick
        label={words.ownEye}
        detail={words.ownEyeWhat}
        checked={ownEye}
        onChange={(value) => setSetting('ownEye', value)}
      />
      <Tick
        label={w.callAndTap.tick}
        detail={w.callAndTap.tickWhat}
        checked={callAndTap}
        onChange={(value) => setSetting('callAndTap', value)}
      />
    </Section>
  );
}
