import { collectionInsights, roundScore, thenAndNowOf } from '../../../actions';
import { previousComparable } from '../../../engine/change';
import type { SculptureRecord } from '../../../engine/record';
import { w } from '../../../words';
import { noAnswer, useDesk, useQuestion } from '../../shell';
import { changeShading } from './changeShading';
import { holdShading } from './holdShading';
import { classShading, indexShading } from './roundShading';
import type { ShadeName, Shading } from './shading';

const words = w.zoneMap.shadeFrom;

/** Nothing is known of any zone, and why. */
const nothing = (from: string): Shading => ({
  key: [{ code: 'none', fill: 'open', word: w.zoneMap.notLooked }],
  of: () => ({ code: 'none', said: w.zoneMap.notLooked }),
  from,
});

/** Says nothing of any zone. */
const outlinesOnly: Shading = {
  key: [{ code: 'bare', fill: 'bare', word: '' }],
  of: () => ({ code: 'bare', said: '' }),
  from: w.zoneMap.shadeFrom.outlines,
};

/** What the map says of each zone; undefined while it is worked out. */
export function useShading(record: SculptureRecord, round: string | undefined, shade: ShadeName): Shading | undefined {
  const desk = useDesk();
  const ofRound = shade === 'index' || shade === 'condition' || shade === 'urgency';
  const previous = shade === 'change' && round ? previousComparable(record, round) : undefined;
  const earlier = previous?.round ?? previous?.instead;
  const asked = useQuestion(ofRound && round ? roundScore(desk, round) : noAnswer);
  const compared = useQuestion(earlier && round ? thenAndNowOf(desk, earlier.thing, round) : noAnswer);
  const insights = useQuestion(shade === 'hold' ? collectionInsights(desk) : noAnswer);
  if (shade === 'hold') {
    const told = insights?.perWork.find((work) => work.record.sculpture.thing === record.sculpture.thing);
    return told && holdShading(told);
  }
  if (shade === 'outlines') return outlinesOnly;
  if (!round) return nothing(words.none);
  if (shade === 'change') {
    if (!earlier) return nothing(words.onlyOne);
    return compared ? changeShading(compared) : undefined;
  }
  if (!asked) return undefined;
  return shade === 'index' ? indexShading(asked) : classShading(asked, shade);
}
