import type { Desk } from '../desk';
import type { PhotoFacts } from '../keepPhoto';

export type Light = NonNullable<PhotoFacts['light']>;

const key = 'light of the day';

/** The light last said today, also after a restart behind the camera; another day is another light. */
export const lightNow = async (desk: Desk): Promise<Light | undefined> => {
  const kept = await desk.store.meta<{ readonly light: Light; readonly day: string }>(key);
  return kept?.day === desk.today() ? kept.light : undefined;
};

export const sayLight = (desk: Desk, light: Light): Promise<void> =>
  desk.store.setMeta(key, { light, day: desk.today() });
