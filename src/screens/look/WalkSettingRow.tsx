import { useState } from 'react';
import type { WalkSetting } from '../../actions';
import { w } from '../../words';
import { Button, Choice } from '../parts';

const words = w.look;

interface WalkSettingRowProps {
  readonly setting: WalkSetting;
  readonly onChange: (setting: WalkSetting) => void;
}

/** The state of the surfaces and the sort of walk, said once: a line until it is to be changed. */
export function WalkSettingRow({ setting, onChange }: WalkSettingRowProps) {
  const [open, setOpen] = useState(false);
  const how = setting.planned ? words.planned : words.passing;
  if (!open) {
    return (
      <div className="row">
        <p className="grow">{w.walk.setting(words.wetName[setting.wet], how)}</p>
        <Button size="round" onClick={() => setOpen(true)}>
          {w.walk.settingChange}
        </Button>
      </div>
    );
  }
  return (
    <div className="look-setting">
      <Choice
        label={words.surface}
        hint={words.surfaceWhat}
        size="round"
        value={setting.wet}
        onChange={(wet) => onChange({ ...setting, wet })}
        options={(['dry', 'damp', 'wet'] as const).map((value) => ({ value, label: words.wetName[value] }))}
      />
      <Choice
        label={words.how}
        size="round"
        value={setting.planned ? 'planned' : 'passing'}
        onChange={(value) => onChange({ ...setting, planned: value === 'planned' })}
        options={[
          { value: 'planned', label: words.planned },
          { value: 'passing', label: words.passing },
        ]}
      />
      <Button size="round" onClick={() => setOpen(false)}>
        {w.walk.settingDone}
      </Button>
    </div>
  );
}
