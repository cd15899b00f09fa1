import { useState } from 'react';
import { ownScale, tabs } from '../../actions';
import { scaleOf } from '../../engine/trade';
import { w } from '../../words';
import { Button, Notice, Page, Reading, Section } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { Contents } from './Contents';
import { EditWeights } from './EditWeights';
import { ErrorOfAnEye } from './ErrorOfAnEye';
import { Example } from './Example';
import { HoldNumbers } from './HoldNumbers';
import { KindsShown } from './KindsShown';
import { OptionNumbers } from './OptionNumbers';
import { PhotosMeasured } from './PhotosMeasured';
import { Rules } from './Rules';
import { RuleTables } from './RuleTables';
import { Sources } from './Sources';
import '../parts/plainTable.css';
import './method.css';

const words = w.method;

/** How is this worked out? The very rows the engine uses, shown, and the weights a collection may change. */
export function MethodScreen() {
  const desk = useDesk();
  const own = useQuestion(ownScale(desk));
  const { mode } = useQuestion(tabs(desk));
  const [editing, setEditing] = useState(false);
  if (own === undefined) {
    return (
      <Page title={words.title} lead={words.lead}>
        <Reading />
      </Page>
    );
  }
  const scale = scaleOf(own);
  return (
    <Page title={words.title} lead={words.lead}>
      <Notice title={words.version(scale.id)}>
        <p>{words.ownScale}</p>
        <p>{own ? words.ownVersion(own.version, Object.keys(own.hazards).length) : words.noOwnVersion}</p>
      </Notice>
      <Contents />
      <Example scale={own} />
      <Section title={words.zoneRule}>
        <Rules rules={words.zoneRuleText} />
      </Section>
      <Section title={words.sculptureRule}>
        <Rules rules={words.sculptureRuleText} />
      </Section>
      <Section
        title={words.kinds}
        lead={words.kindsWhat}
        actions={
          !editing &&
          mode === 'writing' && (
            <span className="not-printed">
              <Button onClick={() => setEditing(true)}>{words.change}</Button>
            </span>
          )
        }
      >
        {mode !== 'writing' && <p className="soft">{words.readingOnly}</p>}
        {editing ? <EditWeights own={own} onDone={() => setEditing(false)} /> : <KindsShown scale={scale} />}
      </Section>
      <RuleTables scale={scale} />
      <PhotosMeasured />
      <HoldNumbers />
      <OptionNumbers />
      <ErrorOfAnEye />
      <Sources />
      <div className="not-printed">
        <Button onClick={() => window.print()}>{words.print}</Button>
      </div>
    </Page>
  );
}
