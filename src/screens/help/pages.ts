import { w } from '../../words';

export interface HelpPage {
  readonly title: string;
  /** What the screen is for. */
  readonly what: string;
  /** What to do first on it. */
  readonly first: string;
  /** Where its figures come from. */
  readonly from: string;
}

/** Every page, by the name its screen has in `helpNameOf` of the shell, in groups that belong together. */
export const groups = [
  { title: w.help.groups.works, pages: w.helpWorks },
  { title: w.help.groups.round, pages: w.helpRound },
  { title: w.help.groups.photos, pages: w.helpPhotos },
  { title: w.help.groups.plan, pages: w.helpPlan },
  { title: w.help.groups.money, pages: w.helpMoney },
  { title: w.help.groups.campaign, pages: w.helpCampaign },
  { title: w.help.groups.papers, pages: w.helpPapers },
  { title: w.help.groups.carry, pages: w.helpCarry },
] as readonly { readonly title: string; readonly pages: Readonly<Record<string, HelpPage>> }[];

export const helpPageOf = (name: string): HelpPage | undefined =>
  groups.map(({ pages }) => pages).find((pages) => Object.hasOwn(pages, name))?.[name];
