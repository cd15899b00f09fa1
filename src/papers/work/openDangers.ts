import type { RoundClasses } from '../../engine/condition';
import { dangersWithoutRound } from '../../engine/condition';
import type { SculptureRecord } from '../../engine/record';
import { type NameOfThing, sayReason, w } from '../../words';
import { danger, list, type PaperNode, say } from '../layout';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;

/** Dangers to people that stand, above all that is told of metal; a line where none does. */
export const openDangers = (
  record: SculptureRecord,
  classes: RoundClasses | undefined,
  nameOf: NameOfThing,
): PaperNode => {
  const dangers = classes?.dangers ?? dangersWithoutRound(record);
  if (dangers.length === 0) return say(words.noDangers, 'small');
  return danger(
    list(
      dangers.map(({ zone, reason }) => {
        const said = sayReason(reason, nameOf);
        const at = record.zones.find(({ thing }) => thing === zone);
        return at ? words.thoughtOf(zoneLabel(at), said) : said;
      }),
    ),
  );
};
