import type { WorkOnPaper } from '../../engine/reckoning';
import { dayRange, vagueDateOrder } from '../../engine/record';
import { date, w, whole } from '../../words';
import { h, type PaperSort, say } from '../layout';
import { nameOfWork, ownText, workOf, worksToChoose } from '../reading';
import { latestOnPaper } from './latestOnPaper';

const words = w.paperVisitors;
const id = 'visitor-panel';
/** Words a standing reader takes in. */
const [fewest, most] = [60, 120];
/** Codes of trade/treatments that lay wax. */
const waxes: readonly string[] = ['wax', 'spot wax', 'hot wax'];

/** What a passer-by is told: why it is waxed, what green means, what to leave alone. Words from the record, with her own between. */
export const visitorPanel: PaperSort = {
  id,
  about: 'work',
  pages: [1, 1],
  title: words.title,
  reader: words.reader,
  choices: worksToChoose,
  make: (source, about) => {
    const work = workOf(source, about);
    if (!work) return undefined;
    const { number, title, maker, date: made } = work.record.sculpture.body;
    const own = (part: string) => ownText(source, id, about, part);
    const wax = lastWax(work);
    const text = own('whole') === '' ? drafted(work, own('about'), own('contact')) : own('whole').split(/\n+/);
    const head = words.head(title, made ? date(made) : '', maker ?? '');
    const n = wordsIn([head, ...text].join(' '));
    return {
      title: words.title,
      over: nameOfWork(work),
      number,
      state: work.state,
      body: [
        h('div', { class: 'panel' }, h('h2', {}, head), ...text.map((line) => say(line))),
        say(words.count(whole(n)), 'small'),
      ],
      own: [
        { part: 'about', label: words.about, hint: words.aboutHint, text: own('about'), longest: 400 },
        { part: 'contact', label: words.contact, hint: words.contactHint, text: own('contact'), longest: 200 },
        { part: 'whole', label: words.whole, hint: words.wholeHint, text: own('whole'), longest: 1500 },
      ],
      lacks: [
        n < fewest && words.lacks.short(whole(n)),
        n > most && words.lacks.long(whole(n)),
        own('whole') === '' && own('contact') === '' && words.lacks.contact,
        own('whole') === '' && wax === undefined && words.lacks.waxed,
      ].filter((line) => typeof line === 'string'),
    };
  },
};

const drafted = (work: WorkOnPaper, about: string, contact: string): readonly string[] => {
  const latest = latestOnPaper(work);
  const wax = lastWax(work);
  return [
    about,
    words.outdoors,
    words.green,
    [latest && words.looked(monthOf(latest.round.body.date)), wax && words.waxed(monthOf(wax))]
      .filter(Boolean)
      .join(' '),
    words.please,
    contact && words.tell(contact),
  ].filter((line) => line !== '') as string[];
};

/** As vague as it is known, and never to the day. */
const monthOf = (day: string): string => date(/^\d{4}-\d{2}-\d{2}$/.test(day) ? day.slice(0, 7) : day);

/** The last waxing of a date that can be told. */
const lastWax = ({ record }: WorkOnPaper): string | undefined =>
  record.treatments
    .filter(({ body }) => waxes.includes(body.type) && dayRange(body.date).from !== '0000')
    .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1))[0]?.body.date;

/** Words as a reader counts them: whatever holds a letter or a figure. */
export const wordsIn = (text: string): number => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
