import { stateOfAll } from '../device/stateOfThings';
import type { PaperSource, WorkOnPaper } from '../engine/reckoning';
import { asThing, type Current, type KindOfThing, nameOf, type Thing } from '../engine/record';

/** The living things of one kind among these. */
export const thingsIn = <K extends KindOfThing>(within: readonly Current[], kind: K): Thing<K>[] =>
  within.flatMap((current) => asThing(current, kind) ?? []);

/** Of every work and of the collection itself: for kinds that may belong to either. */
export const thingsOfAll = <K extends KindOfThing>({ works, around }: PaperSource, kind: K): Thing<K>[] => [
  ...thingsIn(around, kind),
  ...works.flatMap(({ within }) => thingsIn(within, kind)),
];

export const workOf = ({ works }: PaperSource, sculpture: string): WorkOnPaper | undefined =>
  works.find(({ record }) => record.sculpture.thing === sculpture);

/** Names the state of what a campaign is told from: its work, and the money and plans of the collection. */
export const stateWithAround = ({ aroundState }: PaperSource, { state }: WorkOnPaper): string =>
  stateOfAll([aroundState, state]);

/** Number and title, as they stand over a paper. */
export const nameOfWork = ({ record: { sculpture } }: WorkOnPaper): string =>
  [sculpture.body.number, sculpture.body.title].filter(Boolean).join(' ');

export const worksToChoose = ({ works }: PaperSource): readonly { readonly about: string; readonly label: string }[] =>
  works.map((work) => ({ about: work.record.sculpture.thing, label: nameOfWork(work) }));

/** A person as the record names them: by role, and by name where it is kept. */
export const personIn = ({ around }: PaperSource, surveyor: string): string => {
  const role = thingsIn(around, 'surveyor').find(({ thing }) => thing === surveyor)?.body.role ?? '';
  const name = thingsIn(around, 'name').find(({ body }) => body.surveyor === surveyor)?.body.name;
  return [name, role].filter(Boolean).join(', ');
};

/**
 * Words a person wrote herself for one place of a paper (kind `paperText`), as she typed them, or ''. `about` is what the paper was
 * made of, as it stands in its address: a thing name, or a year.
 */
export const ownText = (source: PaperSource, paper: string, about: string, part: string): string => {
  const name = nameOf.paperText(paper, part, about);
  return thingsOfAll(source, 'paperText').find(({ thing }) => thing === name)?.body.text ?? '';
};
