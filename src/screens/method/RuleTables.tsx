import { thresholds } from '../../engine/change';
import { constants } from '../../engine/condition';
import {
  activities,
  beadings,
  counts,
  coverageMethods,
  enClasses,
  ladder,
  origins,
  type Scale,
  severities,
  treatments,
} from '../../engine/trade';
import { factSaid, number, w } from '../../words';
import { Section } from '../parts';
import { RowsTable } from './RowsTable';
import { Rules } from './Rules';

const words = w.method;
const families = ['condition', 'urgency', 'recommendation'] as const;
const percent = (share: number) => number(share * 100, 2);
const yesNo = (yes: boolean) => (yes ? words.yes : words.no);

/** Every table of rows beside the kinds: ladder, weights, errors, classes, treatments, verdicts. */
export function RuleTables({ scale }: { readonly scale: Scale }) {
  return (
    <>
      <Section title={words.ladder} lead={words.ladderWhat}>
        <RowsTable
          heads={[
            words.ladderColumns.step,
            words.ladderColumns.value,
            words.ladderColumns.from,
            words.ladderColumns.to,
          ]}
          figures={[1, 2, 3]}
          rows={ladder.map(({ id, label, value, low, high }) => ({
            key: id,
            cells: [words.percent(label), percent(value), percent(low), percent(high)],
          }))}
        />
      </Section>
      <Section title={words.weights}>
        {[
          { caption: words.severityTable, rows: severities },
          { caption: words.activityTable, rows: activities },
          { caption: words.count, rows: counts },
        ].map(({ caption, rows }) => (
          <RowsTable
            key={caption}
            caption={caption}
            heads={[words.name, words.factor, words.meaning]}
            figures={[1]}
            rows={rows.map(({ id, name, weight, means }) => ({ key: id, cells: [name, number(weight, 2), means] }))}
          />
        ))}
        <RowsTable
          caption={words.origin}
          heads={[words.name, words.meaning, words.takes]}
          rows={origins.map(({ id, name, means, hazard }) => ({
            key: id,
            cells: [name, means, words.takesHazard(hazard, number(scale.stainHazard, 2))],
          }))}
        />
      </Section>
      <Section title={words.errors} lead={words.errorsWhat}>
        <RowsTable
          caption={words.judgedHow}
          heads={[words.name, words.errorColumns.value, words.errorColumns.source]}
          figures={[1]}
          rows={coverageMethods.map(({ id, name, ownSd, source }) => ({
            key: id,
            cells: [name, ownSd === null ? words.asReported : number(ownSd, 2), factSaid(source.text)],
          }))}
        />
        <RowsTable
          caption={words.constants}
          heads={[words.errorColumns.what, words.errorColumns.value, words.errorColumns.source]}
          figures={[1]}
          rows={Object.entries(constants).map(([key, { value, what, source }]) => ({
            key,
            cells: [factSaid(what), number(value, 4), factSaid(source.text)],
          }))}
        />
      </Section>
      <Section title={words.classes} lead={words.classesWhat}>
        {families.map((family) => (
          <div key={family} className="stack tight">
            <RowsTable
              caption={words.classNames[family]}
              heads={[words.classColumns.class, words.classColumns.means, words.classColumns.rule]}
              rows={enClasses[family].map(({ id, name, level }) => ({
                key: id,
                cells: [id, name, words.classRules(ruleNumbers(scale))[family][level] ?? ''],
              }))}
            />
          </div>
        ))}
        <RowsTable
          caption={words.beading}
          heads={[words.name, words.classColumns.rule]}
          rows={beadings.map(({ id, name, proposes }) => ({ key: id, cells: [name, words.beadingProposes(proposes)] }))}
        />
      </Section>
      <Section title={words.order}>
        <Rules rules={words.orderText} />
      </Section>
      <Section title={words.treatments} lead={words.treatmentsWhat}>
        <RowsTable
          heads={[words.treatmentColumns.treatment, words.treatmentColumns.coats, words.treatmentColumns.breaks]}
          rows={treatments.map(({ id, name, coats, breaksSeries }) => ({
            key: id,
            cells: [name, yesNo(coats), yesNo(breaksSeries)],
          }))}
        />
      </Section>
      <Section title={words.verdicts}>
        <Rules rules={words.verdictText} />
        <RowsTable
          heads={[words.errorColumns.what, words.errorColumns.value, words.errorColumns.source]}
          figures={[1]}
          rows={Object.entries(thresholds).map(([key, { value, what, source }]) => ({
            key,
            cells: [factSaid(what), number(value, 3), factSaid(source.text)],
          }))}
        />
      </Section>
    </>
  );
}

/** Numbers the sentences of the class rules speak of, as the engine has them. */
const ruleNumbers = (scale: Scale) => ({
  cc1: number(constants.condition1From.value),
  cc2: number(constants.condition2From.value),
  stake: number(constants.metalAtStake.value, 2),
  active: number(constants.activeInMetal.value * 100, 1),
  level: number(scale.actionLevel, 1),
  share: number(constants.sculptureAsksFrom.value * 100, 0),
});
