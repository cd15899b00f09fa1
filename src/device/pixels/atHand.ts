import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import type { Bring, KeptPhoto } from './asked';
import type { Classes } from './classes';
import { mustReadTrue, type Picture, pictureOf } from './picture';

/** The one photo that is unpacked. */
export interface AtHand {
  /** Lets go of any other, unpacks this one where it is not at hand. Rejects with a StoreProblem. */
  picture(photo: KeptPhoto): Promise<Picture>;
  /** Classes of that photo before the brush, where they were told last under that name; a stroke more then asks for no pixel anew. */
  told(name: string): Classes | undefined;
  keepTold(name: string, classes: Classes): void;
  letGo(): void;
}

export const atHand = (bring: Bring): AtHand => {
  let held: { readonly sha256: string; readonly picture: Picture } | undefined;
  let last: { readonly name: string; readonly classes: Classes } | undefined;
  const letGo = () => {
    held?.picture.close();
    held = undefined;
    last = undefined;
  };
  return {
    letGo,
    told: (name) => (last?.name === name ? last.classes : undefined),
    keepTold: (name, classes) => {
      last = { name, classes };
    },
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
