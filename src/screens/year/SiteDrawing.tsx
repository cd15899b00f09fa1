import type { YearAround } from '../../actions';
import { stagePoint } from '../parts';

interface SiteDrawingProps {
  readonly around: YearAround;
  readonly size: { readonly width: number; readonly height: number };
  /** Works in the order of the walk. */
  readonly walk: readonly string[];
  readonly chosen: string;
  readonly names: ReadonlyMap<string, string>;
}

/** Spots with their number on the walk, and the walk as a line. */
export function SiteDrawing({ around, size, walk, chosen, names }: SiteDrawingProps) {
  const { spots = [], start } = around.site?.body ?? {};
  const begin = start && stagePoint([start.x, start.y], size);
  const placed = walk.flatMap((work) => {
    const spot = spots.find((one) => one.work === work);
    return spot ? [{ work, at: stagePoint([spot.x, spot.y], size) }] : [];
  });
  const path = [...(begin ? [begin] : []), ...placed.map(({ at }) => at)].map((p) => p.join(' ')).join('L');
  return (
    <>
      {path.includes('L') && <path className="site-walk" d={`M${path}`} />}
      {begin && <path className="site-spot" d={`M${begin[0] - 18} ${begin[1] + 16}h36l-18 -34z`} />}
      {placed.map(({ work, at: [x, y] }, i) => (
        <g key={work}>
          <circle className={work === chosen ? 'site-spot chosen' : 'site-spot'} cx={x} cy={y} r="22" />
          <text className="site-number" x={x} y={y}>
            {i + 1}
          </text>
          <text className="site-name" x={x} y={y - 32}>
            {(names.get(work) ?? '').split(' ')[0]}
          </text>
        </g>
      ))}
    </>
  );
}
