import type { PaperSource } from '../../../src/engine/reckoning';
import { type Entry, nameOf } from '../../../src/engine/record';
import { paperSortOf } from '../../../src/papers';
import { type Paper, type PaperNode, type PaperPiece, textOf } from '../../../src/papers/layout';
import { bodies, collection, first, round, sculpture, uuid, zoneA } from '../../files/entries';
import { gardenSurvey, sourceOf } from '../../files/gardenSource';
import { smallSurvey } from '../../files/smallSurvey';

let planted: PaperSource | undefined;
/** The invented garden, read once. */
export const garden = (): PaperSource => {
  planted ??= sourceOf(gardenSurvey());
  return planted;
};

/** A work of the garden by its number. */
export const workNamed = (number: string): string =>
  garden().works.find(({ record }) => record.sculpture.body.number === number)?.record.sculpture.thing ?? '';

/** The small survey with these entries instead of, or beside, its own. */
export const smallWith = (...more: readonly Entry[]): PaperSource => {
  const { collection: home, entries } = smallSurvey();
  return sourceOf({ collection: home, entries: [...entries, ...more] }, '2026-11-26');
};

/** A work of so many zones, none of them looked at, or all of them with nothing found. */
export const workOfZones = (count: number, looked: boolean): PaperSource => {
  const zones = Array.from({ length: count }, (_, i) => nameOf.zone(uuid(1000 + i)));
  return sourceOf(
    {
      collection,
      entries: [
        first(1, collection, 'collection', { name: 'Invented garden' }, { within: collection }),
        first(2, sculpture, 'sculpture', bodies.sculpture),
        ...zones.map((zone, i) =>
          first(10 + i, zone, 'zone', bodies.zone({ letter: `Z${i + 1}`, name: `Part ${i + 1}`, order: i })),
        ),
        ...(looked ? [first(3, round, 'round', bodies.round({ ended: '2026-05-12' }))] : []),
        ...(looked
          ? zones.map((zone, i) =>
              first(200 + i, nameOf.visit(round, zone), 'visit', bodies.visit({ zone, state: 'nothing' })),
            )
          : []),
      ],
    },
    '2026-11-26',
  );
};

export const paperOf = (sort: string, source: PaperSource, about: string = sculpture): Paper => {
  const paper = paperSortOf(sort)?.make(source, about);
  if (!paper) throw new Error(`There is no paper ${sort} about ${about}.`);
  return paper;
};

/** Its words, as they are read from top to bottom. */
export const wordsOf = (paper: Paper): string => textOf(paper.body).replace(/\s+/g, ' ');

/** Every element of a class, or of a tag where no class has that name. */
export const allOf = (piece: PaperPiece, is: (node: PaperNode) => boolean): readonly PaperNode[] => {
  if (piece === undefined || piece === false || typeof piece === 'string' || typeof piece === 'number') return [];
  if (Array.isArray(piece)) return piece.flatMap((one) => allOf(one, is));
  if ('picture' in piece) return [];
  const node = piece as PaperNode;
  return [...(is(node) ? [node] : []), ...node.in.flatMap((one) => allOf(one, is))];
};

export const ofClass =
  (name: string) =>
  ({ at }: PaperNode): boolean =>
    String(at.class ?? '')
      .split(' ')
      .includes(name);

/** What the curator wrote for one place of a paper. */
export const ownWords = (paper: string, part: string, about: string, text: string): Entry =>
  first(7000, nameOf.paperText(paper, part, about), 'paperText', {
    sculpture,
    paper,
    about,
    part,
    text,
    date: '2026-11-26',
  });

/** The small survey with one text in every free field of its things. */
export const everyText = (text: string): PaperSource => {
  const { collection: home, entries } = smallSurvey();
  const free = ['title', 'name', 'note', 'text', 'statement', 'what', 'maker', 'material', 'by', 'who', 'side', 'aim'];
  return sourceOf(
    {
      collection: home,
      entries: entries.map((entry) => ({
        ...entry,
        body: Object.fromEntries(
          Object.entries(entry.body).map(([field, value]) => [
            field,
            free.includes(field) && typeof value === 'string' ? text : value,
          ]),
        ),
      })),
    },
    '2026-11-26',
  );
};

export const hostile = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  '</style><b>',
  "' onmouseover='x",
] as const;

export { round, sculpture, zoneA };
