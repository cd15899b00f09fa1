import type { Reason } from '../../engine/record';
import { deedsOfRound } from './deedsOfRound';
import { namesOfDeeds, reasonsOfActions } from './reasonsOfActions';
import { reasonsOfDevice } from './reasonsOfDevice';
import { type NameOfThing, type Params, paramsOf, type Sentences } from './sentence';

export type { NameOfThing } from './sentence';

/** Every sentence known by now, by the code of its reason: what deeds and the device say from the start on. */
export const sentences: Record<string, (s: Params) => string> = {
  ...reasonsOfActions,
  ...reasonsOfDevice,
  ...namesOfDeeds,
  ...deedsOfRound,
  'deed: taken back': (s: Params) => deedNamed({ code: s.text('code'), params: {} }),
};

/** Takes in the sentences of a part that is no part of the start. */
export const learn = (more: Sentences<string>): void => {
  Object.assign(sentences, more);
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
