import type { Desk } from '../desk';

/** What stands on the screen of a wash and wax day before it is kept as a reading: texts as typed, by field. */
export type AirOfDay = Readonly<Record<string, string>>;

const key = (sculpture: string) => `air of the day ${sculpture}`;

/** As it stood when the screen was left today, also after a restart; nothing on a new day. Never in the record, never carried. */
export const airOfDay = async (desk: Desk, sculpture: string): Promise<AirOfDay | undefined> => {
  const kept = await desk.store.meta<{ readonly day: string; readonly air: AirOfDay }>(key(sculpture));
  return kept?.day === desk.today() ? kept.air : undefined;
};

export const keepAirOfDay = (desk: Desk, sculpture: string, air: AirOfDay): Promise<void> =>
  desk.store.setMeta(key(sculpture), { day: desk.today(), air });
