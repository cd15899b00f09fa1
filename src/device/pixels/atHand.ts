import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import type { Bring, KeptPhoto } from './asked';
import { mustReadTrue, type Picture, pictureOf } from './picture';

/** The one photo that is unpacked. */
export interface AtHand {
  /** Lets go of any other, unpacks this one where it is not at hand. Rejects with a StoreProblem. */
  picture(photo: KeptPhoto): Promise<Picture>;
  letGo(): void;
}

export const atHand = (bring: Bring): AtHand => {
  let held: { readonly sha256: string; readonly picture: Picture } | undefined;
  const letGo = () => {
    held?.picture.close();
    held = undefined;
  };
  return {
    letGo,
    picture: async ({ sha256, size }) => {
      if (held?.sha256 === sha256) return held.picture;
      letGo();
      const kept = await bring(sha256);
      if (!kept) throw new StoreProblem(deviceReason('photo not here', {}));
      const picture = await pictureOf(kept.bytes, kept.mime, size);
      held = { sha256, picture };
      mustReadTrue();
      return picture;
    },
  };
};
