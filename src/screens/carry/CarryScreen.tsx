import { tabs } from '../../actions';
import { w } from '../../words';
import { Notice, Page } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { CarryIn } from './CarryIn';
import { CarryOut } from './CarryOut';
import { OtherWays } from './OtherWays';
import { ToSettle } from './ToSettle';
import '../parts/plainTable.css';
import './carry.css';

const words = w.carry;

/** Take the survey to another device and bring it back. */
export function CarryScreen({ only }: { /** Chosen already: the work to take out. */ readonly only?: string }) {
  const desk = useDesk();
  const { mode } = useQuestion(tabs(desk));
  return (
    <Page title={words.title} lead={words.lead}>
      <Notice title={words.plain} />
      <ToSettle />
      <CarryOut key={only} only={only} />
      {mode === 'writing' ? <CarryIn /> : <Notice kind="caution" title={words.readingOnly} />}
      <OtherWays />
    </Page>
  );
}
