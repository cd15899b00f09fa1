import type { Desk } from '../desk';
import type { LookSaid } from './recordLook';

/** What is said once for a whole walk. */
export type WalkSetting = Pick<LookSaid, 'wet' | 'planned'>;

const key = 'walk of the day';
const usual: WalkSetting = { wet: 'dry', planned: true };

/** As said today, also after a restart; dry and planned on a new day. */
export const walkSettingKept = async (desk: Desk): Promise<WalkSetting> => {
  const kept = await desk.store.meta<WalkSetting & { readonly day: string }>(key);
  return kept?.day === desk.today() ? { wet: kept.wet, planned: kept.planned } : usual;
};

export const keepWalkSetting = (desk: Desk, setting: WalkSetting): Promise<void> =>
  desk.store.setMeta(key, { ...setting, day: desk.today() });
