import type { Thing } from '../../engine/record';
import { date, measureNumber, number, w } from '../../words';
import '../parts/lines.css';

const words = w.layers;

interface LayerLinesProps {
  /** Of one zone, in the order they were laid. */
  readonly layers: readonly Thing<'layer'>[];
  readonly letterOf: (zone: string) => string;
  /** All layers, to say which zone one was taken over from. */
  readonly sources: readonly Thing<'layer'>[];
  readonly edit: ((layer: Thing<'layer'>) => void) | undefined;
}

/** What lies on one zone, the first layer first. */
export function LayerLines({ layers, letterOf, sources, edit }: LayerLinesProps) {
  if (layers.length === 0) return null;
  const from = (layer: Thing<'layer'>) => sources.find(({ thing }) => thing === layer.body.sameAs)?.body.zone;
  return (
    <ol className="lines bare">
      {layers.map((layer) => {
        const source = from(layer);
        const text = (
          <>
            <span className="hot-order">{layer.body.order}</span>
            <span className="grow">
              <span className="strong">{[layer.body.solution, layer.body.strength].filter(Boolean).join(', ')}</span>
              <span className="soft line-detail">{detailOf(layer, source && letterOf(source))}</span>
              {layer.body.note && <span className="line-detail file-name">{layer.body.note}</span>}
            </span>
          </>
        );
        return (
          <li key={layer.thing}>
            {edit ? (
              <button type="button" className="line" onClick={() => edit(layer)}>
                {text}
              </button>
            ) : (
              <div className="line">{text}</div>
            )}
          </li>
        );
      })}
    </ol>
  );
}

const detailOf = ({ body }: Thing<'layer'>, source: string | undefined): string => {
  const { tool, surface, passes, rinsed, date: day, time, air, by, photos } = body;
  return [
    tool && (tool in words.tools ? words.tools[tool as keyof typeof words.tools] : tool),
    surface !== undefined && words.degrees(measureNumber('temperature', surface, 0)),
    passes !== undefined && words.passesOf(number(passes, 0)),
    rinsed && words.rinsedYes,
    `${date(day)}${time ? `, ${time}` : ''}`,
    air,
    by,
    photos && photos.length > 0 && w.look.photoCount(photos.length),
    source && words.takenOver(source),
  ]
    .filter(Boolean)
    .join(' · ');
};
