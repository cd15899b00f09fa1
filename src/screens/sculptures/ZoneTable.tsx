import { Link } from 'wouter';
import { roundScore } from '../../actions';
import { levelOf } from '../../engine/condition';
import type { SculptureRecord, Thing } from '../../engine/record';
import { exposures } from '../../engine/trade';
import { area, w } from '../../words';
import { ClassBadge, EmptyState, IndexDial, LinkButton, Section } from '../parts';
import { noAnswer, pathTo, useDesk, useQuestion } from '../shell';
import { areaToday } from './areaToday';

const words = w.sculptures.work;

export const exposureWords = (codes: readonly string[]): string =>
  codes.map((code) => exposures.find(({ id }) => id === code)?.name ?? code).join(', ');

interface ZoneTableProps {
  readonly record: SculptureRecord;
  readonly zones: readonly Thing<'zone'>[];
  /** The round index and classes are taken from. */
  readonly round: string | undefined;
}

/** The zones in walking order, each with what the last round saw. */
export function ZoneTable({ record, zones, round }: ZoneTableProps) {
  const desk = useDesk();
  const { thing: sculpture } = record.sculpture;
  const asked = useQuestion(round ? roundScore(desk, round) : noAnswer);
  if (zones.length === 0)
    return (
      <Section title={words.zones}>
        <EmptyState
          title={words.zonesNone}
          actions={
            <LinkButton to={pathTo.newZone(sculpture)} kind="main" size="round">
              {w.sculptures.zone.add}
            </LinkButton>
          }
        >
          <p>{words.zonesNoneWhat}</p>
        </EmptyState>
      </Section>
    );
  const total = zones.reduce((sum, zone) => sum + areaToday(zone), 0);
  return (
    <Section title={words.zones} actions={<LinkButton to={pathTo.zones(sculpture)}>{words.editZones}</LinkButton>}>
      <div className="zones-room">
        <table className="zones">
          <thead>
            <tr>
              <th scope="col">{words.columns.letter}</th>
              <th scope="col" className="zone-figure">
                {words.columns.m2}
              </th>
              <th scope="col" className="zone-exposure">
                {words.columns.exposure}
              </th>
              <th scope="col">{words.columns.index}</th>
              <th scope="col">{words.columns.class}</th>
            </tr>
          </thead>
          <tbody>
            {zones.map((zone) => {
              const score = asked?.score.zones.find((z) => z.zone === zone.thing);
              const classes = asked?.classes.zones.find(({ about }) => about === zone.thing);
              return (
                <tr key={zone.thing}>
                  <th scope="row">
                    <Link href={pathTo.zone(sculpture, zone.thing)} className="zone-name">
                      <span className="zone-letter">{zone.body.letter}</span>
                      <span>{zone.body.name}</span>
                    </Link>
                  </th>
                  <td className="zone-figure figures">{area(areaToday(zone))}</td>
                  <td className="zone-exposure">{exposureWords(zone.body.exposure)}</td>
                  <td>
                    <IndexDial
                      size="small"
                      of={w.sculptures.zone.edit(zone.body.letter, zone.body.name)}
                      figure={score ?? null}
                    />
                  </td>
                  <td>
                    <span className="zone-classes">
                      {classes &&
                        (['urgency', 'condition'] as const).map((which) => {
                          const level = levelOf(classes, which);
                          const set = classes.set?.[which] !== undefined;
                          return level === null ? null : (
                            <ClassBadge
                              key={which}
                              family={which === 'urgency' ? 'UC' : 'CC'}
                              level={level}
                              set={set}
                            />
                          );
                        })}
                    </span>
                  </td>
                </tr>
              );
            })}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{words.total}</th>
              <td className="zone-figure figures">{area(total)}</td>
              <td colSpan={3} />
            </tr>
          </tfoot>
        </table>
      </div>
    </Section>
  );
}
