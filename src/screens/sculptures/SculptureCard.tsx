import { Link } from 'wouter';
import type { SculptureRow } from '../../actions';
import { enClasses, roundTypes } from '../../engine/trade';
import { date, share, w, whole } from '../../words';
import { CautionIcon, ClassBadge, IndexDial, OnIcon } from '../parts';
import { pathTo } from '../shell';

export const roundTypeName = (type: string): string => roundTypes.find(({ id }) => id === type)?.name ?? type;

const levels = [0, 1, 2, 3] as const;

/** The level whose name takes most room, in the language of the app. */
const longest = (names: readonly { readonly name: string }[]): (typeof levels)[number] =>
  levels.reduce((best, level) => ((names[level]?.name.length ?? 0) > (names[best]?.name.length ?? 0) ? level : best));

/** As much as is usually told of a work: what is still worked out finds its room kept. Never seen nor heard. */
const usual = (): NonNullable<SculptureRow['summary']> => ({
  round: { thing: '', date: '2026-09-28', type: 'annual', ended: true },
  openRound: null,
  index: { value: 50, low: 40, high: 60, reasons: [] },
  seenShare: 1,
  condition: longest(enClasses.condition),
  urgency: longest(enClasses.urgency),
  recommendation: null,
  zones: 12,
  rounds: 1,
  dangers: 0,
  unsettled: 0,
  scale: '',
});

interface SculptureCardProps {
  readonly row: SculptureRow;
  /** It was not known when the list was opened: the card has the room of a known one from then on. */
  readonly keepRoom?: boolean;
}

/** One work in the list. The whole card is the touch target. */
export function SculptureCard({ row: { thing, body, summary }, keepRoom }: SculptureCardProps) {
  const title = body.title || w.sculptures.untitled;
  return (
    <Link href={pathTo.sculpture(thing)} className="work-card card by-hand">
      <IndexDial
        figure={summary?.index ?? null}
        of={title}
        note={summary ? (summary.round ? undefined : w.sculptures.notSurveyed) : '…'}
      />
      <span className="work-words">
        {body.number && <span className="work-number">{body.number}</span>}
        <span className="work-title">{title}</span>
        <span className="work-standing">
          {keepRoom && (
            <span className="work-told room" aria-hidden="true">
              <Standing summary={usual()} />
            </span>
          )}
          <span className="work-told">
            {summary ? <Standing summary={summary} /> : <span className="soft">{w.sculptures.workingOut}</span>}
          </span>
        </span>
      </span>
      <OnIcon />
    </Link>
  );
}

function Standing({ summary }: { readonly summary: NonNullable<SculptureRow['summary']> }) {
  const { round, index, condition, urgency, dangers, unsettled, zones } = summary;
  return (
    <>
      {dangers > 0 && (
        <span className="work-danger">
          <CautionIcon />
          {w.sculptures.dangers(dangers)}
        </span>
      )}
      {round && (
        <span className="row work-classes">
          {urgency !== null && <ClassBadge family="UC" level={urgency} worded />}
          {condition !== null && <ClassBadge family="CC" level={condition} worded />}
        </span>
      )}
      <span className="work-facts soft">
        {round && (
          <span>
            {round.ended
              ? w.sculptures.lastRound(roundTypeName(round.type), date(round.date))
              : w.sculptures.runningRound(date(round.date))}
          </span>
        )}
        {index && <span>{w.sculptures.between(whole(index.low), whole(index.high))}</span>}
        {round && <span>{w.sculptures.seen(share(summary.seenShare))}</span>}
        <span>{zones > 0 ? w.sculptures.zones(zones) : w.sculptures.noZones}</span>
        {unsettled > 0 && <span>{w.sculptures.unsettled(unsettled)}</span>}
      </span>
    </>
  );
}
