import { isSecureAddress } from '../../device/address';
import { canKeepAwake } from '../../device/awake';
import { batteryNow } from '../../device/battery';
import { openCamera } from '../../device/camera';
import { isInstalled } from '../../device/installed';
import { keptFiles } from '../../device/offline';
import { StoreProblem } from '../../device/storeProblem';
import { type ReadyLine, readyLine } from './readiness';

/** Of our own making: a day of rounds in the cold, with the screen never dark, may take half a charge or more. */
const chargeForADay = 0.7;

export const offlineReady = async (): Promise<ReadyLine> => {
  if (!isSecureAddress()) return readyLine('look', 'offline: not secure', {});
  const files = await keptFiles();
  if (files.worker === 'none') return readyLine('look', 'offline: no worker', {});
  if (files.worker === 'silent') return readyLine('unknown', 'offline: silent', {});
  const { kept, all } = files;
  return kept === all
    ? readyLine('ok', 'offline: kept', { files: all })
    : readyLine('look', 'offline: some missing', { kept, all });
};

export const installedReady = async (): Promise<ReadyLine> =>
  isInstalled() ? readyLine('ok', 'installed: yes', {}) : readyLine('look', 'installed: in a tab', {});

/** Opens it and lets go at once: a browser that asks, asks now and not on the ladder. */
export const cameraReady = async (): Promise<ReadyLine> => {
  try {
    (await openCamera()).close();
    return readyLine('ok', 'camera: opens', {});
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
    const { code, params } = error.reason;
    if (code === 'camera not allowed') return readyLine('look', 'camera: not allowed', {});
    if (code === 'no camera here') return readyLine('look', 'camera: none', {});
    if (code === 'no camera on the page') return readyLine('unknown', 'camera: not on the page', {});
    return readyLine('look', 'camera: busy', { said: String(params.said ?? '') });
  }
};

export const awakeReady = async (): Promise<ReadyLine> => {
  const can = await canKeepAwake();
  if (can === 'yes') return readyLine('ok', 'awake: yes', {});
  return can === 'refused' ? readyLine('look', 'awake: refused', {}) : readyLine('look', 'awake: cannot', {});
};

export const batteryReady = async (): Promise<ReadyLine> => {
  const battery = await batteryNow();
  if (!battery) return readyLine('unknown', 'battery: not told', {});
  const percent = Math.round(battery.level * 100);
  if (battery.level >= chargeForADay) return readyLine('ok', 'battery: enough', { percent });
  return battery.charging
    ? readyLine('look', 'battery: filling', { percent })
    : readyLine('look', 'battery: low', { percent });
};
