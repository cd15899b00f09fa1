import { type BodyOf, dayRange, endOf, type Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsOfKind } from '../theThing';

/** A zone as a walk passes it. */
export interface ZonePassed {
  readonly zone: Thing<'zone'>;
  /** The latest look on or before today. */
  readonly last: Thing<'look'> | undefined;
  /** Latest day of the latest coating; null where none is recorded. */
  readonly coated: string | null;
}

export interface WorkPassed {
  readonly sculpture: Thing<'sculpture'>;
  /** In walking order. */
  readonly zones: readonly ZonePassed[];
}

/** All works with their zones as a walk passes them, by number: read by kind, so that nothing is scored before a step is made. */
export const patrolWalk = (desk: Desk): Question<readonly WorkPassed[]> =>
  ask(
    desk,
    'patrol walk',
    () => `${desk.store.changes()} ${desk.today()}`,
    async () => {
      const [works, zones, looks, treatments] = await Promise.all([
        thingsOfKind(desk, 'sculpture'),
        thingsOfKind(desk, 'zone'),
        thingsOfKind(desk, 'look'),
        thingsOfKind(desk, 'treatment'),
      ]);
      const today = desk.today();
      const lastLook = latestBy(
        looks.filter(({ body }) => body.date <= today),
        ({ body }) => body.zone,
      );
      const coatings = treatments
        .filter(({ body }) => treatmentOf(body.type)?.coats)
        .map(({ body }) => ({ body, day: dayRange(body.date).to }))
        .filter(({ day }) => day <= today);
      return works
        .sort((a, b) => byNumber.compare(a.body.number, b.body.number) || (a.thing < b.thing ? -1 : 1))
        .map((sculpture) => ({
          sculpture,
          zones: livingOf(zones, sculpture.thing, today).map((zone) => ({
            zone,
            last: lastLook.get(zone.thing),
            coated: latestDay(coatings.filter(({ body }) => covers(body, zone))),
          })),
        }));
    },
  );

const byNumber = new Intl.Collator('en', { numeric: true });

const livingOf = (zones: readonly Thing<'zone'>[], sculpture: string, today: string): readonly Thing<'zone'>[] =>
  zones
    .filter((zone) => zone.body.sculpture === sculpture && today < (endOf(zone) ?? '9999'))
    .sort((a, b) => a.body.order - b.body.order || (a.thing < b.thing ? -1 : 1));

const covers = (treatment: BodyOf<'treatment'>, zone: Thing<'zone'>): boolean =>
  treatment.sculpture === zone.body.sculpture && (treatment.zones.length === 0 || treatment.zones.includes(zone.thing));

const latestDay = (rows: readonly { readonly day: string }[]): string | null =>
  rows.reduce<string | null>((latest, { day }) => (latest === null || day > latest ? day : latest), null);

const latestBy = (
  looks: readonly Thing<'look'>[],
  of: (look: Thing<'look'>) => string,
): ReadonlyMap<string, Thing<'look'>> => {
  const latest = new Map<string, Thing<'look'>>();
  for (const look of looks) {
    const before = latest.get(of(look));
    const later =
      !before ||
      look.body.date > before.body.date ||
      (look.body.date === before.body.date && look.thing > before.thing);
    if (later) latest.set(of(look), look);
  }
  return latest;
};
