import { useMemo, useState } from 'react';
import { classesOf, type FindingScore, scoreRound, type ZoneScore } from '../../engine/condition';
import type { BodyOf } from '../../engine/record';
import {
  activities,
  activityOf,
  counts,
  enClasses,
  type KindOfFinding,
  kindOf,
  kinds,
  ladder,
  ladderStepOf,
  origins,
  severities,
  severityOf,
} from '../../engine/trade';
import { figure, fromTo, number, sayReason, share, w } from '../../words';
import { Choice, IndexDial, Notice, Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { Select } from '../parts/Select';
import { type ExampleFinding, exampleRecord, exampleRound } from './exampleRecord';

const words = w.method;

interface Chosen {
  readonly kind: string;
  readonly origin: ExampleFinding['origin'];
  readonly step: string;
  readonly count: NonNullable<ExampleFinding['count']>;
  readonly severity: ExampleFinding['severity'];
  readonly activity: ExampleFinding['activity'];
}

const start: Chosen = {
  kind: kinds[0]?.id ?? '',
  origin: 'metal',
  step: ladderStepOf(0.2).id,
  count: 'one',
  severity: 'moderate',
  activity: 'active',
};

const findingOf = ({ kind, origin, step, count, severity, activity }: Chosen): ExampleFinding => {
  const measure = kindOf(kind)?.measure;
  const rung = ladder.find(({ id }) => id === step);
  return {
    kind,
    origin,
    severity,
    activity,
    ...(measure === 'area' && rung
      ? { coverage: { value: rung.value, low: rung.low, high: rung.high, method: 'ladder' as const } }
      : {}),
    ...(measure === 'count' ? { count } : {}),
  };
};

const optionsOf = <Id extends string>(
  rows: readonly { readonly id: Id; readonly name: string; readonly means: string }[],
) => rows.map(({ id, name, means }) => ({ value: id, label: name, detail: means }));

/** One finding the reader can change, and each step the engine takes with it. */
export function Example({ scale }: { readonly scale: BodyOf<'scale'> | null }) {
  const [chosen, setChosen] = useState(start);
  const change = (part: Partial<Chosen>) => setChosen({ ...chosen, ...part });
  const kind = kindOf(chosen.kind);
  const worked = useMemo(() => {
    const record = exampleRecord(findingOf(chosen), 1, scale);
    const score = scoreRound(record, exampleRound);
    const classes = classesOf(record, exampleRound, { score }).zones[0];
    const zone = score.zones[0];
    const finding = zone?.findings[0];
    return zone && finding && classes ? { zone, finding, classes } : undefined;
  }, [chosen, scale]);
  return (
    <Section title={words.example} lead={words.exampleWhat}>
      <div className="example">
        <div className="stack not-printed">
          <Select
            label={words.kind}
            value={chosen.kind}
            onChange={(value) => change({ kind: value })}
            options={kinds.map(({ id, name }) => ({ value: id, label: name }))}
          />
          {kind?.measure === 'area' && (
            <Choice
              label={words.coverage}
              value={chosen.step}
              onChange={(step) => change({ step })}
              options={ladder.map(({ id, label }) => ({ value: id, label: words.percent(label) }))}
              tiles="narrow"
            />
          )}
          {kind?.measure === 'count' && (
            <Choice
              label={words.count}
              value={chosen.count}
              onChange={(count) => change({ count })}
              options={optionsOf(counts)}
            />
          )}
          <Choice
            label={words.severity}
            value={chosen.severity}
            onChange={(severity) => change({ severity })}
            options={optionsOf(severities)}
          />
          <Choice
            label={words.activity}
            value={chosen.activity}
            onChange={(activity) => change({ activity })}
            options={optionsOf(activities)}
          />
          <Choice
            label={words.origin}
            value={chosen.origin}
            onChange={(origin) => change({ origin })}
            options={optionsOf(origins)}
          />
        </div>
        {worked && kind && (
          <div className="stack" role="status" aria-label={words.result}>
            <Steps kind={kind} zone={worked.zone} finding={worked.finding} />
            <div className="row">
              <IndexDial figure={worked.zone} of={words.exampleZone} />
              <p className="grow">
                {words.rangeIs(figure(worked.zone).value, figure(worked.zone).range)}{' '}
                {worked.zone.worstStep &&
                  words.oneStep(
                    severityOf(worked.zone.worstStep.to as Chosen['severity']).name.toLowerCase(),
                    number(worked.zone.worstStep.value, 0),
                  )}
              </p>
            </div>
            {worked.classes.stopWords.length > 0 && <Notice kind="stop" title={words.stopWord} />}
            {families.map((family) => {
              const { level, reasons } = worked.classes[family];
              return (
                <div key={family}>
                  <p className="strong">
                    {level === null
                      ? words.classNames[family]
                      : `${enClasses[family][level]?.id}, ${enClasses[family][level]?.name}`}
                  </p>
                  <Reasons reasons={reasons} />
                </div>
              );
            })}
            <Reasons reasons={worked.classes.recommendation.askConservator} />
          </div>
        )}
      </div>
    </Section>
  );
}

const families = ['condition', 'urgency', 'recommendation'] as const;

interface StepsProps {
  readonly kind: KindOfFinding;
  readonly zone: ZoneScore;
  readonly finding: FindingScore;
}

function Steps({ kind, zone, finding }: StepsProps) {
  const { parts, cover, loss } = finding;
  const { severity, activity } = finding.finding;
  const none = parts.hazard === 0;
  const rows = none
    ? []
    : [
        ...(cover
          ? [
              {
                step: words.steps.coverage,
                value: words.withRange(share(cover.value), fromTo(share(cover.low), share(cover.high))),
                why: words.coverageWhy,
              },
            ]
          : []),
        {
          step: words.steps.hazard,
          value: number(parts.hazard, 2),
          why: finding.finding.origin === 'stain' ? words.stainWhy : kind.why,
        },
        { step: words.steps.severity, value: number(parts.severity, 2), why: severityOf(severity).means },
        { step: words.steps.activity, value: number(parts.activity, 2), why: activityOf(activity).means },
        { step: words.steps.extent, value: number(parts.extent, 3), why: words.extentWhy[kind.measure] },
        {
          step: words.steps.loss,
          value: number(loss, 3),
          why: words.product(
            [parts.hazard, parts.severity, parts.activity].map((part) => number(part, 2)),
            number(parts.extent, 3),
          ),
        },
        { step: words.steps.index, value: number(zone.value, 1), why: words.indexProduct(number(loss, 3)) },
      ];
  return (
    <>
      {none && <Notice title={words.unscored}>{finding.reasons.map((reason) => sayReason(reason)).join(' ')}</Notice>}
      {rows.length > 0 && (
        <table className="plain-table cards">
          <caption className="unseen">{words.example}</caption>
          <thead>
            <tr>
              <th scope="col">{words.step}</th>
              <th scope="col" className="of-number">
                {words.figure}
              </th>
              <th scope="col">{words.stepWhy}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ step, value, why }) => (
              <tr key={step}>
                <th scope="row">{step}</th>
                <td data-head={words.figure} className="of-number strong">
                  {value}
                </td>
                <td data-head={words.stepWhy}>{why}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {!none && <Reasons reasons={finding.reasons} />}
    </>
  );
}
