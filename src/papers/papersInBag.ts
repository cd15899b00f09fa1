import type { BagContents, PaperFile } from '../device/bag';
import { type PaperIssue, paperHtml } from './layout';
import { paperSorts } from './registry';
import { sourceInBag } from './sourceInBag';

/** Every paper that can be made of what goes into the bag, as drafts: nobody has signed them. Their pictures are the photos of the bag. */
export const papersInBag = (contents: BagContents): readonly PaperFile[] => {
  const source = sourceInBag(contents);
  const photos = new Map(contents.photos.map(({ sha256, path }) => [sha256, path.replace(/^data\//, '../')]));
  const issue: PaperIssue = {
    author: '',
    status: 'draft',
    day: contents.made,
    size: 'A4',
    invented: source.invented,
  };
  const taken = new Set<string>();
  return paperSorts.flatMap((sort) =>
    sort.choices(source).flatMap(({ about }): readonly PaperFile[] => {
      const paper = sort.make(source, about);
      if (!paper) return [];
      const path = pathOf(`${paper.number} ${sort.id}`, taken);
      const html = paperHtml(paper, issue, (sha256) => photos.get(sha256));
      return [{ path, title: paper.title, over: paper.over, html }];
    }),
  );
};

/** Plain letters, and no name twice. */
const pathOf = (name: string, taken: Set<string>): string => {
  const plain = name
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  for (let n = 1; ; n++) {
    const path = `data/papers/${plain}${n > 1 ? `-${n}` : ''}.html`;
    if (taken.has(path)) continue;
    taken.add(path);
    return path;
  }
};
