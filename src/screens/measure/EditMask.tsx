import { useMemo, useState } from 'react';
import { colourAt, keepTouches, layCheckDots } from '../../actions';
import { seedOf } from '../../engine/chance';
import { isRefused, type Point } from '../../engine/photo';
import { share, w } from '../../words';
import { Notice, PhotoStage } from '../parts';
import { MapSwatch } from '../parts/MapSwatch';
import { Reasons } from '../parts/Reasons';
import { PixelsUnderWay, useDeed, useDesk } from '../shell';
import { OutlineMarks, SpotMark } from './Marks';
import { MaskOver } from './MaskOver';
import { type Brushing, MaskPad } from './MaskPad';
import type { MaskToolProps } from './MaskTool';
import { brushes, enoughSpots, type MaskTouches, spotsEach, touchesOf, withDab, withSpot } from './maskTouches';
import { sortsOf } from './subject';
import { useMask } from './useMask';

const words = w.measure;

/** Spots of each sort tapped, the mask they make, and the brush that puts it right: dab by dab, no drag. */
export function EditMask({ of, hand, part, size, urls, alt, onStop }: MaskToolProps) {
  const desk = useDesk();
  const seed = seedOf(`${of.photo} ${of.about} ${of.kind}`);
  const inPart = hand.draft?.part ?? part;
  const { run, refused, busy } = useDeed();
  const now = useMemo(() => touchesOf(hand.draft?.working), [hand]);
  const change = (touch: (before: MaskTouches) => MaskTouches) =>
    keepTouches(desk, of, (draft) => ({
      part: draft?.part ?? part,
      working: { seed, ...touch(touchesOf(draft?.working)) },
      corners: [],
    }));
  const [brushing, setBrushing] = useState<Brushing>({
    doing: enoughSpots(now) ? 'brush' : 'tap',
    sort: now.green.length < spotsEach ? 'green' : 'sound',
    brush: 'middle',
  });
  const { seen, waiting } = useMask(of.photo, inPart, now, seed);
  const told = seen && !isRefused(seen) ? seen : undefined;
  const names = sortsOf(of.kind);
  const { doing, sort, brush } = brushing;
  const touch = (at: Point) => {
    if (doing === 'brush') return void run(() => change((before) => withDab(before, sort, brushes[brush], at)));
    void run(
      async () => {
        const told = await colourAt(desk, of.photo, at);
        return told.ok ? change((before) => withSpot(before, sort, at, told.colour)) : told;
      },
      () => {
        if (sort === 'green' && now.green.length + 1 >= spotsEach && now.sound.length < spotsEach)
          setBrushing({ ...brushing, sort: 'sound' });
      },
    );
  };
  const lay = () =>
    told &&
    void run(() =>
      layCheckDots(desk, of, {
        maskShare: told.share,
        leftOut: told.leftOut,
        inMask: told.inMask.length,
        outsideMask: told.outsideMask.length,
      }),
    );
  const does = doing === 'tap' ? words.spotTap(names[sort]) : words.dab(names[sort]);
  return (
    <>
      <p className="page-lead">{words.maskLead(names.green, names.sound)}</p>
      {refused && <Notice kind="problem" title={refused} />}
      <div className="measure-tool">
        <PhotoStage url={urls.whole} alt={alt} size={size} touchDoes={does} onTouch={touch}>
          {told && <MaskOver overlay={told.overlay} size={size} />}
          <OutlineMarks outline={inPart} size={size} as="part" />
          {(['green', 'sound'] as const).flatMap((of) =>
            now[of].map(({ at: [x, y] }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a spot is its place in the row and nothing else
              <SpotMark key={`${of} ${i}`} at={[x, y]} size={size} as={of === 'green' ? 'y' : 'sound'} />
            )),
          )}
        </PhotoStage>
        <MaskPad
          now={now}
          names={names}
          brushing={brushing}
          onBrushing={setBrushing}
          onChange={(touch) => void run(() => change(touch))}
          onStop={onStop}
          onLay={told && !waiting && !busy ? lay : undefined}
        >
          {waiting && <PixelsUnderWay says={words.maskWaits} />}
          {seen && isRefused(seen) && (
            <Notice kind="caution" title={words.noFigure}>
              <Reasons reasons={seen.refused} />
            </Notice>
          )}
          {told && (
            <div role="status" className="stack tight">
              <p className="strong">{words.maskSays(share(told.share))}</p>
              <p className="row">
                <MapSwatch of="green" /> {words.maskKey}
              </p>
              {told.leftOut > 0 && (
                <p className="row">
                  <MapSwatch of="left out" /> {words.maskLeftOut(share(told.leftOut))}
                </p>
              )}
              <Reasons reasons={told.reasons} />
            </div>
          )}
        </MaskPad>
      </div>
    </>
  );
}
