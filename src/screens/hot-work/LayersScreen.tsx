import { useState } from 'react';
import { addPlanned, tabs } from '../../actions';
import { layersOf, nextOrder, sameAsBefore, sameIn } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { w, workName } from '../../words';
import { AddIcon, Button, EmptyState, Notice, Page } from '../parts';
import { LongList } from '../parts/LongList';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { type Around, AroundThing } from './AroundWork';
import { LayerLines } from './LayerLines';
import { LayerSheet } from './LayerSheet';
import { timeIn } from './typed';
import './hotWork.css';

const words = w.layers;

/** The log of colour layers, zone by zone; the next zone in one touch where it is the same as the one before. */
export function LayersScreen({ campaign }: { readonly campaign: string }) {
  return (
    <AroundThing kind="campaign" thing={campaign} show={(around) => <Layers campaign={campaign} around={around} />} />
  );
}

interface Open {
  readonly zone: string;
  readonly layer?: Thing<'layer'>;
}

function Layers({ campaign, around }: { readonly campaign: string; readonly around: Around }) {
  const { record, planned } = around;
  const desk = useDesk();
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const [open, setOpen] = useState<Open>();
  const { run, refused, busy } = useDeed();
  const layers = planned.layer.filter(({ body }) => body.campaign === campaign);
  const { body } = record.sculpture;
  const letterOf = (zone: string) => record.zones.find(({ thing }) => thing === zone)?.body.letter ?? '';
  const same = (zone: Thing<'zone'>, layer: Thing<'layer'>) => {
    const laid = sameIn(layer, zone.thing, { date: desk.today(), time: timeIn(desk.now()) });
    void run(
      () => addPlanned(desk, 'layer', laid),
      () => say(words.sameKept(zone.body.letter, laid.order, laid.solution)),
    );
  };
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.campaign(campaign), label: words.back }}
    >
      {refused && <Notice kind="problem" title={refused} />}
      {record.zones.length === 0 && (
        <EmptyState title={words.noZones}>
          <p>{words.noZonesWhat}</p>
        </EmptyState>
      )}
      <LongList
        rows={record.zones}
        className="hot-zones"
        show={(zone) => {
          const { letter, name } = zone.body;
          const own = layersOf(layers, zone.thing);
          const before = sameAsBefore(layers, zone.thing);
          return (
            <li key={zone.thing} className="hot-card">
              <div className="row">
                <span className="letter">{letter}</span>
                <h2 className="grow hot-name">{name}</h2>
                <span className="soft">{own.length === 0 ? words.none : words.count(own.length)}</span>
              </div>
              <LayerLines
                layers={own}
                letterOf={letterOf}
                sources={layers}
                edit={mayWrite ? (layer) => setOpen({ zone: zone.thing, layer }) : undefined}
              />
              {mayWrite && (
                <div className="row by-hand not-printed">
                  <Button
                    size="round"
                    icon={<AddIcon />}
                    aria-label={words.writeOf(letter)}
                    onClick={() => setOpen({ zone: zone.thing })}
                  >
                    {words.write}
                  </Button>
                  {before && (
                    <SameButton
                      letter={letter}
                      as={letterOf(before.body.zone)}
                      layer={before}
                      busy={busy}
                      go={() => same(zone, before)}
                    />
                  )}
                </div>
              )}
            </li>
          );
        }}
      />
      {record.zones.length > 0 && <PrintRow />}
      {open && (
        <LayerSheet
          campaign={campaign}
          record={record}
          layers={layers}
          zone={open.zone}
          layer={open.layer}
          order={open.layer?.body.order ?? nextOrder(layers, open.zone)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}

interface SameButtonProps {
  readonly letter: string;
  readonly as: string;
  readonly layer: Thing<'layer'>;
  readonly busy: boolean;
  readonly go: () => void;
}

/** One touch: what was laid on the zone before, on this one too. */
function SameButton({ letter, as, layer, busy, go }: SameButtonProps) {
  const what = [layer.body.solution, layer.body.strength].filter(Boolean).join(', ');
  return (
    <Button kind="main" size="big" disabled={busy} aria-label={words.sameOf(letter, as, what)} onClick={go}>
      {words.same(as)} <span className="hot-under">{what}</span>
    </Button>
  );
}
