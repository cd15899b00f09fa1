import type { SculptureRecord } from '../../engine/record';
import { kindOf, treatmentOf } from '../../engine/trade';
import { date, w } from '../../words';

const words = w.settle;

type Body = Readonly<Record<string, unknown>>;

const textOf = (body: Body, field: string): string | undefined => {
  const value = body[field];
  return typeof value === 'string' && value !== '' ? value : undefined;
};

/** What the thing calls itself, where it has a word of its own. */
const ownName = (kind: string, body: Body): string | undefined => {
  if (kind === 'finding') return kindOf(textOf(body, 'kind') ?? '')?.name ?? textOf(body, 'kind');
  if (kind === 'treatment') return treatmentOf(textOf(body, 'type') ?? '')?.name ?? textOf(body, 'type');
  if (kind === 'zone') return [textOf(body, 'letter'), textOf(body, 'name')].filter(Boolean).join(' · ');
  if (kind === 'round') return date(textOf(body, 'date') ?? '');
  return ['title', 'name', 'role', 'material', 'side', 'what', 'statement'].flatMap((f) => textOf(body, f) ?? [])[0];
};

/** A thing as this screen calls it, and where it belongs: the work, its zone, its round. */
export const titleOf = (
  kind: string,
  body: Body,
  record: SculptureRecord | undefined,
): { readonly title: string; readonly where: string } => {
  const own = ownName(kind, body);
  const kindName = words.kinds[kind] ?? kind;
  const zone = record?.zones.find(({ thing }) => thing === body.zone)?.body;
  const round = record?.rounds.find(({ thing }) => thing === body.round)?.body;
  const where = [
    kind === 'sculpture' ? undefined : record?.sculpture.body.title,
    zone && w.thenAndNow.zoneNamed(zone.letter, zone.name),
    round && w.thenAndNow.roundNamed(date(round.date)),
  ];
  return { title: own ? `${kindName}: ${own}` : kindName, where: where.filter(Boolean).join(', ') };
};
