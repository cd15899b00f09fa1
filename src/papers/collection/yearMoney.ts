import { type Money, sumsByCurrency } from '../../engine/money';
import type { PaperSource } from '../../engine/reckoning';
import { list as inWords, money, w, whole } from '../../words';
import { figure, h, type PaperPiece, say } from '../layout';
import { thingsIn, thingsOfAll } from '../reading';

const words = w.paperYear;

const told = (amounts: readonly Money[]): string => inWords(sumsByCurrency(amounts).map((sum) => money(sum)));

export const planOf = ({ around }: PaperSource, year: number) =>
  thingsIn(around, 'yearPlan').find(({ body }) => body.year === year)?.body;

/** What the year cost as far as the record says so, and what there is for the next. */
export const moneyOfYear = (source: PaperSource, year: number): PaperPiece => {
  const done = thingsOfAll(source, 'treatment').flatMap(({ body }) =>
    body.date.startsWith(String(year)) && body.cost ? [body.cost] : [],
  );
  const rows = [year, year + 1].flatMap((of): PaperPiece[] => {
    const plan = planOf(source, of);
    const lift = (plan?.liftDays ?? []).flatMap(({ cost }) => cost ?? []);
    return [
      lift.length > 0 &&
        figure(words.lift(String(of)), told(lift), words.liftHow(words.days(lift.length, whole(lift.length)))),
      plan?.budget && figure(words.budget(String(of)), money(plan.budget), words.budgetHow),
    ];
  });
  return h(
    'div',
    { class: 'figures' },
    done.length > 0
      ? figure(words.spent(String(year)), told(done), words.spentHow(words.entries(done.length, whole(done.length))))
      : say(words.spentNone, 'small'),
    ...rows,
    !planOf(source, year + 1) && say(words.noPlan(String(year + 1)), 'small'),
  );
};
