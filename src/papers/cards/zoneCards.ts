import { zonesAt } from '../../engine/record';
import { reaches, roundTypes } from '../../engine/trade';
import { area, w, whole } from '../../words';
import { boxes, danger, fine, h, list, type PaperPiece, type PaperSort, room, say, section, under } from '../layout';
import { nameOfWork, workOf, worksToChoose } from '../reading';
import { cardSheets } from './cardSheets';
import { earlierKinds } from './earlierKinds';
import { kindsByGroup } from './kindsByGroup';
import { ladderOfPatches } from './ladderOfPatches';
import type { OnCard } from './zoneCard';

const words = w.paperCards;
const start = w.round.start;

/** Cards to fill in with a pencil, one a zone in walking order, with the answers of the pad: for when the tablet dies. */
export const zoneCards: PaperSort = {
  id: 'zone-cards',
  about: 'work',
  pages: [2, 6],
  title: words.title,
  reader: words.reader,
  choices: (source) => {
    const withZones = new Set(
      source.works.flatMap(({ record }) => (record.zones.length > 0 ? [record.sculpture.thing] : [])),
    );
    return worksToChoose(source).filter(({ about }) => withZones.has(about));
  },
  make: (source, about) => {
    const work = workOf(source, about);
    if (!work || work.record.zones.length === 0) return undefined;
    const { record } = work;
    const zones = zonesAt(record, source.today);
    const cards = zones.map(
      (zone, i): OnCard => ({
        letter: zone.body.letter,
        name: zone.body.name,
        place: [
          words.of(whole(i + 1), whole(zones.length)),
          area(zone.body.versions.at(-1)?.area.m2 ?? 0),
          reaches.find(({ id }) => id === zone.body.reach)?.name ?? zone.body.reach,
        ],
        kinds: earlierKinds(record, zone.thing),
      }),
    );
    return {
      title: words.title,
      over: nameOfWork(work),
      number: record.sculpture.body.number || record.sculpture.body.title,
      state: work.state,
      own: [],
      lacks: record.rounds.length > 0 ? [] : [words.lacks.kinds],
      body: [
        fine(
          say(words.lead),
          danger(say(words.people)),
          section(words.round, ofTheRound()),
          section(words.howTitle, list([...words.how]), ladderOfPatches('large')),
          under(words.kindsTitle, kindsByGroup()),
        ),
        ...cardSheets(cards),
      ],
    };
  },
};

const ofTheRound = (): PaperPiece => {
  const { day, light, who, started, ended, sheet } = words.fields;
  return h(
    'div',
    { class: 'card-round' },
    ...[day, who, started, ended, light, sheet].map((name) => room(name)),
    ticks(
      'card-wide',
      words.type,
      roundTypes.map((type) => type.name),
    ),
    ticks(undefined, words.surface, Object.values(start.wetName)),
    ticks('card-rest', words.washed, Object.values(start.washedName)),
  );
};

const ticks = (place: 'card-wide' | 'card-rest' | undefined, name: string, of: readonly string[]): PaperPiece =>
  h('div', place ? { class: place } : {}, h('p', { class: 'room-name' }, name), boxes(of));
