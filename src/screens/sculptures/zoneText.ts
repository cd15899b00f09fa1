import type { ZoneFields } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { type AreaDraft, areaFrom, draftFrom } from './areaDraft';

/** What the zone form holds. */
export interface ZoneText {
  readonly letter: string;
  readonly name: string;
  readonly exposure: readonly string[];
  readonly substrate: string;
  readonly reach: string;
  /** '0.5', '1', '1.5' or '2'. */
  readonly weight: string;
  readonly area: AreaDraft;
  readonly since: string;
  readonly note: string;
}

/** A new zone; surface, reach and exposure are taken from the zone before it, which is most often right. */
export const newZoneText = (before: BodyOf<'zone'> | undefined, today: string): ZoneText => ({
  letter: '',
  name: '',
  exposure: before?.exposure ?? [],
  substrate: before?.versions.at(-1)?.substrate ?? 'bronze',
  reach: before?.reach ?? 'ground',
  weight: '1',
  area: draftFrom(undefined),
  since: today,
  note: '',
});

export const zoneTextOf = (body: BodyOf<'zone'>, today: string): ZoneText => ({
  letter: body.letter,
  name: body.name,
  exposure: body.exposure,
  substrate: body.versions.at(-1)?.substrate ?? '',
  reach: body.reach,
  weight: String(body.significance),
  area: draftFrom(body.versions.at(-1)?.area),
  since: today,
  note: body.note ?? '',
});

/** What the deeds take, or undefined while name or area are missing. */
export const fieldsFrom = (text: ZoneText): ZoneFields | undefined => {
  const area = areaFrom(text.area);
  if (!area || !text.name.trim()) return undefined;
  return {
    name: text.name.trim(),
    area,
    substrate: text.substrate,
    exposure: text.exposure,
    reach: text.reach,
    significance: Number(text.weight),
    ...(text.letter.trim() ? { letter: text.letter.trim() } : {}),
    note: text.note.trim() || undefined,
  };
};

/** True where the text says another area or surface than the zone's last version: what makes a new one after its first visit. */
export const isRedrawn = (text: ZoneText, body: BodyOf<'zone'>): boolean => {
  const before = zoneTextOf(body, text.since);
  return text.substrate !== before.substrate || JSON.stringify(text.area) !== JSON.stringify(before.area);
};
