import { asThing, endOf, nameOf, type Thing } from '../../engine/record';
import { labourOf, type Pace, paceOf } from '../../engine/year';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsOfKind } from '../theThing';

/** One work as a year is planned and packed for: nothing of it is scored. */
export interface WorkAround {
  readonly sculpture: Thing<'sculpture'>;
  /** Living, in walking order. */
  readonly zones: readonly Thing<'zone'>[];
  readonly rounds: readonly Thing<'round'>[];
  readonly stations: number;
  readonly squares: number;
  readonly inserts: readonly Thing<'insert'>[];
  /** Open checks: what of it could hurt somebody. */
  readonly dangers: readonly Thing<'personCheck'>[];
  /** How it is got at, and where it stands, in her words. */
  readonly access: string | undefined;
  readonly place: string | undefined;
}

export interface YearAround {
  /** By number. */
  readonly works: readonly WorkAround[];
  readonly pace: Pace;
  readonly labour: ReturnType<typeof labourOf>;
  /** Where the works stand, and the size of the picture of it in pixels; none for a blank sheet. */
  readonly site: Thing<'sitePlan'> | undefined;
  readonly siteSize: { readonly width: number; readonly height: number } | undefined;
}

const siteOf = async (desk: Desk): Promise<Pick<YearAround, 'site' | 'siteSize'>> => {
  const site = asThing(await desk.store.current(nameOf.sitePlan(desk.collection)), 'sitePlan');
  const photo = site?.body.photo ? asThing(await desk.store.current(site.body.photo), 'photo') : undefined;
  const { width, height } = photo?.body ?? {};
  return { site, siteSize: width && height ? { width, height } : undefined };
};

const byNumber = new Intl.Collator('en', { numeric: true });

/** Works with what a year asks of them, and her own pace from her own rounds. */
export const yearAround = (desk: Desk): Question<YearAround> =>
  ask(
    desk,
    'year around',
    () => `${desk.store.changes()} ${desk.today()}`,
    async () => {
      const [sculptures, zones, rounds, stations, sentinels, inserts, access, places, visits, treatments, checks] =
        await Promise.all([
          thingsOfKind(desk, 'sculpture'),
          thingsOfKind(desk, 'zone'),
          thingsOfKind(desk, 'round'),
          thingsOfKind(desk, 'station'),
          thingsOfKind(desk, 'sentinel'),
          thingsOfKind(desk, 'insert'),
          thingsOfKind(desk, 'access'),
          thingsOfKind(desk, 'place'),
          thingsOfKind(desk, 'visit'),
          thingsOfKind(desk, 'treatment'),
          thingsOfKind(desk, 'personCheck'),
        ]);
      const today = desk.today();
      const of = <T extends { readonly body: { readonly sculpture: string } }>(list: readonly T[], work: string): T[] =>
        list.filter(({ body }) => body.sculpture === work);
      const works = sculptures
        .sort((a, b) => byNumber.compare(a.body.number, b.body.number) || (a.thing < b.thing ? -1 : 1))
        .map((sculpture) => ({
          sculpture,
          zones: of(zones, sculpture.thing)
            .filter((zone) => today < (endOf(zone) ?? '9999'))
            .sort((a, b) => a.body.order - b.body.order || (a.thing < b.thing ? -1 : 1)),
          rounds: of(rounds, sculpture.thing).sort((a, b) => a.body.date.localeCompare(b.body.date)),
          stations: of(stations, sculpture.thing).length,
          squares: of(sentinels, sculpture.thing).length,
          inserts: of(inserts, sculpture.thing),
          dangers: of(checks, sculpture.thing).filter(({ body }) => body.closed === undefined),
          access: access.find(({ thing }) => thing === nameOf.access(sculpture.thing))?.body.text || undefined,
          place: places.find(({ thing }) => thing === nameOf.place(sculpture.thing))?.body.text || undefined,
        }));
      return { works, pace: paceOf(visits), labour: labourOf(treatments, zones), ...(await siteOf(desk)) };
    },
  );
