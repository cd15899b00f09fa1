import type { ZoneScore } from '../../engine/condition';
import type { WorkOnPaper } from '../../engine/reckoning';
import { w } from '../../words';
import { h, type PaperPiece, say, section } from '../layout';
import { lettersOnViews, viewsBeside } from '../views';
import type { LatestOnPaper } from './latestOnPaper';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;

type Step = 0 | 1 | 2 | 3 | 4;
type HatchStep = Exclude<Step, 0>;

/** The sides of the work with the outlines of its zones, hatched by how much of each one finding covers, in black and white. */
export const markedViews = (work: WorkOnPaper, latest: LatestOnPaper): PaperPiece => {
  const drawn = lettersOnViews(work);
  if (drawn.size === 0) return section(words.views, say(words.noViews));
  const steps = new Map(latest.score.zones.map((zone) => [zone.zone, stepOf(zone)]));
  const missing = latest.zones.filter(({ body }) => !drawn.has(body.letter));
  return section(
    words.views,
    key(),
    say(words.hatchHow, 'small'),
    ...viewsBeside(work, {
      fill: (zone) => {
        const step = steps.get(zone);
        return step ? `url(#${patternOf(step)})` : undefined;
      },
      open: (zone) => !steps.has(zone),
    }),
    missing.length > 0 && say(words.notDrawn(missing.map(zoneLabel).join('; ')), 'small'),
  );
};

/** Lower ends of the steps of the hatch, shares of the zone. */
const floors: readonly (readonly [number, HatchStep])[] = [
  [0.5, 4],
  [0.25, 3],
  [0.05, 2],
  [0, 1],
];

/** The step of the largest coverage of one finding in the zone; dirt is none. */
const stepOf = ({ findings }: ZoneScore): Step => {
  const covers = findings.flatMap(({ finding, cover }) =>
    cover && cover.value > 0 && !finding.cleared && finding.origin !== 'dirt' ? [cover.value] : [],
  );
  const most = Math.max(0, ...covers);
  return most === 0 ? 0 : (floors.find(([floor]) => most >= floor)?.[1] ?? 1);
};

const patternOf = (step: HatchStep): string => `coverage-${step}`;

/** Dots, lines, closer lines, crossed lines: each step carries more ink than the one before it. */
const pattern = (step: HatchStep): PaperPiece => {
  const apart = { 1: 16, 2: 12, 3: 7, 4: 7 }[step];
  const half = apart / 2;
  return h(
    'pattern',
    {
      id: patternOf(step),
      width: apart,
      height: apart,
      patternUnits: 'userSpaceOnUse',
      patternTransform: 'rotate(45)',
    },
    step === 1
      ? h('circle', { cx: half, cy: half, r: 1.4, class: 'ink' })
      : h('path', { d: `M0 ${half}h${apart}${step === 4 ? `M${half} 0v${apart}` : ''}` }),
  );
};

/** The key, and with it the patterns all views of the paper are filled with. */
const key = (): PaperPiece => {
  const patterns = ([1, 2, 3, 4] as const).map(pattern);
  return h(
    'ul',
    { class: 'hatch-key', 'aria-label': words.hatchKey },
    ...([0, 1, 2, 3, 4, 'open'] as const).map((step) =>
      h(
        'li',
        {},
        h(
          'svg',
          { class: 'drawing swatch', viewBox: '0 0 84 49', width: 48, height: 28, 'aria-hidden': 'true' },
          step === 0 && h('defs', {}, ...patterns),
          h('rect', {
            x: 1.5,
            y: 1.5,
            width: 81,
            height: 46,
            'stroke-width': 2,
            fill: step === 0 || step === 'open' ? undefined : `url(#${patternOf(step)})`,
            'stroke-dasharray': step === 'open' ? '9 6' : undefined,
          }),
        ),
        words.hatch[step],
      ),
    ),
  );
};
