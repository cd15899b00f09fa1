import type { Reason } from '../../engine/record';
import { namesOfDeeds, reasonsOfActions } from './reasonsOfActions';
import { reasonsOfAgreement } from './reasonsOfAgreement';
import { reasonsOfChange } from './reasonsOfChange';
import { reasonsOfCondition } from './reasonsOfCondition';
import { reasonsOfDevice } from './reasonsOfDevice';
import { reasonsOfExchange } from './reasonsOfExchange';
import { reasonsOfEye } from './reasonsOfEye';
import { reasonsOfFirmness } from './reasonsOfFirmness';
import { reasonsOfHold } from './reasonsOfHold';
import { reasonsOfLife } from './reasonsOfLife';
import { deedsOfRound, reasonsOfRound } from './reasonsOfRound';
import { reasonsOfSite } from './reasonsOfSite';
import { reasonsOfTrend } from './reasonsOfTrend';
import { type NameOfThing, type Params, paramsOf, type Sentences } from './sentence';

export type { NameOfThing } from './sentence';

/** Every sentence by the code of its reason. */
export const sentences: Sentences<string> = {
  ...reasonsOfCondition,
  ...reasonsOfChange,
  ...reasonsOfFirmness,
  ...reasonsOfRound,
  ...reasonsOfExchange,
  ...reasonsOfActions,
  ...reasonsOfDevice,
  ...reasonsOfEye,
  ...reasonsOfLife,
  ...reasonsOfTrend,
  ...reasonsOfHold,
  ...reasonsOfSite,
  ...reasonsOfAgreement,
  ...namesOfDeeds,
  ...deedsOfRound,
  'deed: taken back': (s: Params) => deedNamed({ code: s.text('code'), params: {} }),
};

const upper = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);

/** One plain sentence for a curator. A code of a newer version is shown as it came, never in silence. */
export const sayReason = (reason: Reason, nameOf?: NameOfThing): string => {
  const sentence = sentences[reason.code];
  return upper(sentence ? sentence(paramsOf(reason, nameOf)) : reason.code);
};

/** A deed as the undo button names it, in the middle of a sentence. */
export const deedNamed = (reason: Reason): string => {
  const sentence = sentences[reason.code];
  return sentence ? sentence(paramsOf(reason)) : reason.code;
};
