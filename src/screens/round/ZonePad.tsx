import { w } from '../../words';
import { Button } from '../parts';
import { FindingRows } from './FindingRows';
import { GonePanel } from './GonePanel';
import { KindsOfGroup, KindTiles } from './KindTiles';
import { usePad } from './PadContext';
import { ActivityQuestion, AgainstQuestion, ExtentQuestion, OriginQuestion, SeverityQuestion } from './Questions';
import { WholeZone } from './WholeZone';
import { WhyPanel } from './WhyPanel';

/** Asks one thing at a time; where nothing is asked, the findings stand as rows and new ones can be begun. */
export function ZonePad() {
  const { view, touch } = usePad();
  const { asks } = view;
  if (asks.what === 'rows' || asks.what === 'card') {
    return (
      <>
        <FindingRows />
        <KindTiles />
        <WholeZone />
      </>
    );
  }
  return (
    <>
      <Asked />
      <div className="row by-hand">
        <Button size="round" onClick={() => touch({ do: 'close' })}>
          {w.round.zone.backToList}
        </Button>
      </div>
    </>
  );
}

function Asked() {
  const { asks } = usePad().view;
  switch (asks.what) {
    case 'gone':
      return <GonePanel />;
    case 'why':
      return <WhyPanel />;
    case 'kinds':
      return <KindsOfGroup group={asks.group} />;
    case 'origin':
      return <OriginQuestion finding={asks.finding} />;
    case 'extent':
      return <ExtentQuestion finding={asks.finding} />;
    case 'against':
      return <AgainstQuestion finding={asks.finding} />;
    case 'severity':
      return <SeverityQuestion finding={asks.finding} />;
    case 'activity':
      return <ActivityQuestion finding={asks.finding} />;
    default:
      return null;
  }
}
