import { useState } from 'react';
import type { NeedOf, Rank } from '../../engine/condition';
import { area, type NameOfThing, w, whole } from '../../words';
import { Button, FigureText, LinkButton, Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { pathTo } from '../shell';
import { ClassBadges } from './ClassesShown';
import { SetClassSheet } from './SetClassSheet';

const words = w.nextSteps;

interface SculpturesInOrderProps {
  readonly ranks: readonly Rank[];
  readonly needs: readonly NeedOf[];
  readonly names: NameOfThing;
}

/** The works themselves in order of need. */
export function SculpturesInOrder({ ranks, needs, names }: SculpturesInOrderProps) {
  const [setting, setSetting] = useState<NeedOf | undefined>();
  return (
    <Section title={words.sculptureOrder}>
      <table className="plain-table cards">
        <thead>
          <tr>
            <th scope="col">{words.sculpture}</th>
            <th scope="col">{words.classes}</th>
            <th scope="col">{words.sculptureIndex}</th>
            <th scope="col">{words.activeGreen}</th>
            <th scope="col">{words.burden}</th>
            <th scope="col" className="not-printed">
              <span className="unseen">{words.set}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {ranks.map((rank) => {
            const need = needs.find(({ record }) => record.sculpture.thing === rank.sculpture);
            if (!need) return null;
            const { score, classes } = need;
            const asks = classes.sculpture.recommendation.askConservator;
            return (
              <tr key={rank.sculpture}>
                <th scope="row">
                  <span className="figures">{rank.rank}. </span>
                  {names(rank.sculpture)}
                  {asks.length > 0 && <Reasons reasons={asks} nameOf={names} />}
                </th>
                <td data-head={words.classes}>
                  <ClassBadges classes={classes.sculpture} />
                </td>
                <td data-head={words.sculptureIndex}>
                  <FigureText
                    figure={
                      score.value === null ? null : { value: score.value, low: score.low ?? 0, high: score.high ?? 100 }
                    }
                  />
                </td>
                <td data-head={words.activeGreen} className="figures">
                  {area(score.active.green.value)}
                </td>
                <td data-head={words.burden} className="figures">
                  {whole(rank.burden.value)}
                </td>
                <td className="not-printed">
                  <div className="row">
                    <Button onClick={() => setSetting(need)} aria-label={words.setForWork(names(rank.sculpture) ?? '')}>
                      {words.set}
                    </Button>
                    <LinkButton kind="quiet" to={pathTo.thenAndNow(rank.sculpture)}>
                      {words.toThenAndNow}
                    </LinkButton>
                  </div>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {setting && (
        <SetClassSheet
          round={setting.classes.round}
          classes={setting.classes.sculpture}
          about={setting.record.sculpture.body.title}
          onClose={() => setSetting(undefined)}
        />
      )}
    </Section>
  );
}
