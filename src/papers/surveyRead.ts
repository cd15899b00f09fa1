import type { BagContents } from '../device/bag';
import { collectionOwn } from '../engine/reckoning';
import {
  assemble,
  byWithin,
  type CollectionOwn,
  type Current,
  gather,
  idPart,
  nameOf,
  type SculptureRecord,
} from '../engine/record';

/** One work: what the sums read, and everything else within it. */
export interface WorkRead {
  readonly record: SculptureRecord;
  readonly within: readonly Current[];
}

export interface SurveyRead {
  readonly name: string;
  readonly invented: boolean;
  /** What belongs to the collection itself. */
  readonly around: readonly Current[];
  /** By number. */
  readonly works: readonly WorkRead[];
}

/** The survey as it stands, work by work. */
export const surveyRead = ({ collection, entries }: BagContents): SurveyRead => {
  const currents = assemble(entries);
  const all = [...currents.values()].filter(({ gone }) => !gone);
  const own = ownOf(currents, all, collection);
  const body = currents.get(collection)?.lead.body ?? {};
  return {
    name: String(body.name ?? '') || idPart(collection),
    invented: body.invented === true,
    around: all.filter(({ within }) => within === collection),
    works: [...byWithin(all).values()]
      .flatMap((things) => {
        const record = gather(things, own);
        return record ? [{ record, within: things }] : [];
      })
      .sort((a, b) => (numberOf(a) < numberOf(b) ? -1 : 1)),
  };
};

const numberOf = ({ record: { sculpture } }: WorkRead): string => `${sculpture.body.number}\n${sculpture.thing}`;

const ownOf = (currents: ReadonlyMap<string, Current>, all: readonly Current[], collection: string): CollectionOwn => {
  const living = (kind: string) => all.filter((current) => current.kind === kind);
  return collectionOwn({
    scale: currents.get(nameOf.scale(collection)),
    holdRules: currents.get(nameOf.holdRules(collection)),
    reratings: living('rerating'),
    rounds: living('round'),
    eyeChecks: living('eyeCheck'),
  });
};
