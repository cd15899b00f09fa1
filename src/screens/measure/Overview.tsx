import { eyesOf, type Measuring, type MeasuringPlace, type WayOfMeasuring } from '../../actions';
import { readSelector, writeSelector } from '../../engine/photo';
import { w } from '../../words';
import { Button, Notice, PhotoStage, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { PhotoAway, useDesk, useQuestion } from '../shell';
import { KindChoice } from './KindChoice';
import { OutlineMarks } from './Marks';
import { SharesTable } from './SharesTable';
import { sharesOf } from './sharesOf';
import { WayCard } from './WayCard';

const words = w.measure;
const ways: readonly WayOfMeasuring[] = ['traced', 'dots', 'photo'];

interface OverviewProps {
  readonly at: Measuring;
  readonly about: string;
  readonly name: string;
  readonly kind: string | undefined;
  readonly url: string | null | undefined;
  readonly alt: string;
  /** This page only reads. */
  readonly fixed: boolean;
  readonly onPlace: (patch: { readonly [K in keyof MeasuringPlace]: MeasuringPlace[K] | undefined }) => void;
}

/** Which part, which kind, the ways to measure it, and what all of them say. */
export function Overview({ at, about, name, kind, url, alt, fixed, onPlace }: OverviewProps) {
  const eyes = useQuestion(eyesOf(useDesk()));
  const { part, size } = at;
  const rows = kind ? sharesOf(at, kind, part ? writeSelector(part.outline) : undefined, eyes) : [];
  const traced = at.measures.find(({ body }) => body.kind === kind && body.coverage.method === 'traced')?.body.working;
  const patches = readSelector(traced?.patches?.value ?? '') ?? [];
  const cannot = fixed || url === null || size === null;
  return (
    <>
      {fixed && <Notice title={words.readingOnly} />}
      {url === null && (
        <Notice kind="caution" title={words.photoElsewhere}>
          <p>{words.photoElsewhereWhat}</p>
        </Notice>
      )}
      <PhotoAway photo={at.photo.thing} />
      {size === null && (
        <Notice kind="caution" title={words.noSize}>
          <p>{words.noSizeWhat}</p>
        </Notice>
      )}
      {size && (
        <Section title={words.part}>
          <div className="measure-part">
            <PhotoStage url={url} alt={alt} size={size}>
              {part && <OutlineMarks outline={part.outline} size={size} as="part" />}
              <OutlineMarks outline={patches} size={size} as="patch" />
            </PhotoStage>
            <div className="stack">
              <p>{part ? words.partFrom[part.from] : words.partNone(name)}</p>
              {!cannot && (
                <div className="row not-printed">
                  <Button size="round" kind={part ? 'plain' : 'main'} onClick={() => onPlace({ open: 'part' })}>
                    {part ? words.partDrawAnew : words.partDraw}
                  </Button>
                  {part?.from === 'drawn' && (
                    <Button kind="quiet" size="round" onClick={() => onPlace({ drawn: undefined })}>
                      {words.partFromMap}
                    </Button>
                  )}
                </div>
              )}
            </div>
          </div>
        </Section>
      )}
      <div className="not-printed">
        <Section title={words.kind}>
          <KindChoice at={at} kind={kind} onChange={(chosen) => onPlace({ kind: chosen })} />
        </Section>
      </div>
      {!cannot && (
        <div className="not-printed">
          <Section title={words.ways} {...(kind ? {} : { lead: words.kindFirst })}>
            {kind && (
              <div className="way-cards">
                {ways.map((way) => (
                  <WayCard
                    key={way}
                    of={{ photo: at.photo.thing, about, kind, way }}
                    row={rows.find((row) => row.way === way)}
                    disabled={!part}
                    onOpen={() => onPlace({ kind, open: way })}
                  />
                ))}
              </div>
            )}
          </Section>
        </div>
      )}
      {kind && (
        <Section title={words.table}>
          <SharesTable kind={kind} rows={rows} fixed={fixed} />
        </Section>
      )}
      <PrintRow />
    </>
  );
}
