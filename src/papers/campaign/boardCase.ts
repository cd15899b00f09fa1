import { causesFirst } from '../../engine/campaign';
import { zonesAt } from '../../engine/record';
import { w, whole } from '../../words';
import { fine, newPage, type PaperPiece, type PaperSort, say } from '../layout';
import { ownText, stateWithAround } from '../reading';
import { latestOnPaper } from '../work/latestOnPaper';
import { notLookedFirst } from '../work/notLookedFirst';
import { boardAnnex } from './boardAnnex';
import { figuresInShort, motionBox, waysTable } from './boardFront';
import { campaignOnPaper, campaignsAhead } from './campaignOnPaper';
import { draftedMotion } from './draftedMotion';
import { sameSpotPair } from './sameSpot';
import { waysOf } from './waysSideBySide';

const words = w.paperBoard;
const id = 'board-case';

/** The case of one campaign for a board: a page to decide on, and two of annex. */
export const boardCase: PaperSort = {
  id,
  about: 'campaign',
  pages: [3, 3],
  title: words.title,
  reader: words.reader,
  speaksOf: ['money'],
  choices: campaignsAhead,
  make: (source, about) => {
    const file = campaignOnPaper(source, about);
    if (!file) return undefined;
    const { record, campaign, work, name, planned, today } = file;
    const ways = waysOf(file);
    const latest = latestOnPaper(work);
    const pair = sameSpotPair(work);
    const own = ownText(source, id, about, 'motion');
    const drafted = draftedMotion(file, ways);
    const body: PaperPiece[] = [
      fine(
        notLookedFirst(latest, true),
        say(ways.options.length > 1 ? words.lead(name, whole(ways.options.length)) : words.leadNoWays(name)),
      ),
      fine(figuresInShort(file, ways, latest, pair), waysTable(file, ways)),
      motionBox(own === '' ? drafted : own),
      newPage(boardAnnex(file, ways)),
    ];
    return {
      title: words.heading(campaign.body.title),
      over: name,
      number: record.sculpture.body.number,
      state: stateWithAround(source, work),
      scale: latest?.score.scale,
      body,
      own: [{ part: 'motion', label: words.motionLabel, hint: words.motionHint, text: own, drafted, longest: 2000 }],
      lacks: [
        pair === undefined && words.lacks.pair,
        ways.options.length < 2 && words.lacks.ways,
        ways.rows.length < 2 && words.lacks.prices,
        campaign.body.option === undefined && words.lacks.chosen,
        latest === undefined && words.lacks.round,
        causesFirst(zonesAt(record, today), planned.cause, today).waits && words.lacks.causes,
      ].filter((line) => typeof line === 'string'),
    };
  },
};
