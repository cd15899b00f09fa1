import { methodsOn } from '../../engine/care';
import { hotWorkRule, kindOf, methodOf, stopRules } from '../../engine/trade';
import { list as listed, measure, number, w } from '../../words';
import {
  columns,
  danger,
  facts,
  fine,
  list,
  type PaperPiece,
  type PaperSort,
  room,
  say,
  section,
  table,
} from '../layout';
import { ownText, stateWithAround, thingsIn } from '../reading';
import { type LatestOnPaper, latestOnPaper } from '../work/latestOnPaper';
import { type CampaignOnPaper, campaignOnPaper, campaignsToChoose } from './campaignOnPaper';
import { insertsTold } from './insertsTold';

const words = w.paperSite;
const id = 'site-card';

/** One page to be laminated: what not to touch, inserts with their limits, when to stop, whom to call, water, power, hot work. */
export const siteCard: PaperSort = {
  id,
  about: 'campaign',
  pages: [1, 1],
  title: words.title,
  reader: words.reader,
  speaksOf: ['access'],
  choices: (source) => campaignsToChoose(source, ({ campaign: { body } }) => !body.givenUp),
  make: (source, about) => {
    const file = campaignOnPaper(source, about);
    if (!file) return undefined;
    const { record, work, name, campaign } = file;
    const own = (part: string) => ownText(source, id, about, part);
    const latest = latestOnPaper(work);
    const contacts = own('contacts') || contactsOfYear(file);
    const inserts = insertsTold(file);
    return {
      title: words.heading(record.sculpture.body.title),
      over: `${name}: ${campaign.body.title}`,
      number: record.sculpture.body.number,
      state: stateWithAround(source, work),
      body: [
        fine(
          say(words.lead),
          never(file, latest),
          section(words.inserts, insertRows(file)),
          columns(
            section(words.stop, list(stopRules.map(({ text }) => text)), say(words.stopWho)),
            section(words.contacts, contacts === '' ? room(words.contactsRoom, 3) : say(contacts)),
            section(words.site, siteFacts(file, own('hours'))),
            hotCard(file),
          ),
        ),
      ],
      own: [
        {
          ...{ part: 'contacts', label: words.contactsLabel, hint: words.contactsHint },
          ...{ text: own('contacts'), drafted: contactsOfYear(file), longest: 600 },
        },
        { part: 'hours', label: words.hoursLabel, hint: words.hoursHint, text: own('hours'), longest: 300 },
      ],
      lacks: [
        contacts === '' && words.lacks.contacts,
        file.planned.accessSheet.length === 0 && words.lacks.access,
        methodsOn(file.things('methodSheet')[0]).usual && words.lacks.methods,
        own('hours') === '' && words.lacks.hours,
        ...inserts
          .filter(({ limit, kept }) => limit === undefined && kept === '')
          .map((insert) => words.lacks.limits(insert.name)),
      ].filter((line) => typeof line === 'string'),
    };
  },
};

/** Whom the plan of the latest year says to call. */
const contactsOfYear = ({ source }: CampaignOnPaper): string =>
  thingsIn(source.around, 'yearPlan')
    .filter(({ body }) => body.contacts)
    .sort((a, b) => a.body.year - b.body.year)
    .at(-1)?.body.contacts ?? '';

/** What is never done to this work, and which zones are left alone until a conservator has said so. */
const never = (file: CampaignOnPaper, latest: LatestOnPaper | undefined): PaperPiece => {
  const { forbidden, alsoForbidden, usual } = methodsOn(file.things('methodSheet')[0]);
  const letters = new Map(file.record.zones.map(({ thing, body }) => [thing, body.letter]));
  const alone = (latest?.classes.zones ?? []).flatMap(({ about, stopWords }) =>
    stopWords.length > 0
      ? [words.untouched(letters.get(about) ?? '?', listed(stopWords.map((kind) => kindOf(kind)?.name ?? kind)))]
      : [],
  );
  return danger(
    say(
      `${words.never}: ${[...forbidden.map((code) => methodOf(code)?.name ?? code), ...alsoForbidden.map((line) => line.replace(/\.$/, ''))].join('; ')}.`,
    ),
    usual && say(words.usual, 'small'),
    list(alone),
  );
};

const insertRows = (file: CampaignOnPaper): PaperPiece => {
  const rows = insertsTold(file);
  if (rows.length === 0) return say(words.insertsNone);
  const { columns: heads } = words;
  return table(
    words.nobodyKnows,
    [{ head: heads.insert, kind: 'wide' }, { head: heads.removable }, { head: heads.limit }, { head: heads.watcher }],
    rows.map(({ name, removable, bedding, limit, care }) => [
      name,
      [removable, bedding].filter(Boolean).join('; '),
      limit ?? (care?.method === 'remove' ? words.comesOut : words.noLimit),
      care?.watcher ?? '',
    ]),
  );
};

const siteFacts = ({ planned }: CampaignOnPaper, hours: string): PaperPiece => {
  const body = planned.accessSheet[0]?.body;
  const { competent, bears } = body ?? {};
  return (
    facts([
      [words.water, body?.water],
      [words.power, body?.power],
      [words.closures, body?.closures],
      [words.ground, body?.ground],
      [words.bears, bears && words.bearsWords[bears]],
      [words.competent, competent && [competent.role, competent.name].filter(Boolean).join(', ')],
      [words.rescue, body?.rescue],
      [words.hours, hours],
    ]) ?? say(words.accessNone)
  );
};

/** The next day of hot work that is not closed, or what published rules ask for at least and room for today's. */
const hotCard = (file: CampaignOnPaper): PaperPiece => {
  const next = file
    .things('hotDay')
    .filter(({ body }) => body.campaign === file.campaign.thing && !body.closed && body.date >= file.today)
    .sort((a, b) => a.body.date.localeCompare(b.body.date))[0]?.body;
  const clear = measure('length', next?.clearZone ?? hotWorkRule('clear zone').value, 1);
  const watch = number(next?.watchMinutes ?? hotWorkRule('watch since 2019').value);
  return section(
    words.hot,
    list([
      next
        ? words.hotPermit(next.permit, [next.authorisedBy.role, next.authorisedBy.name].filter(Boolean).join(', '))
        : words.hotNone,
      words.hotClear(clear),
      words.hotWatch(watch),
      ...(next?.watcher ? [words.hotWatcher([next.watcher.role, next.watcher.name].filter(Boolean).join(', '))] : []),
    ]),
    !next && words.hotRoom.map((name) => room(name)),
    say(words.hotRules, 'small'),
  );
};
