import { useState } from 'react';
import { editPlanned, watchOfCampaign } from '../../actions';
import { causesFirst, type StepStanding, stepAfter, stepsOfCampaign } from '../../engine/campaign';
import { zonesAt } from '../../engine/record';
import { namesOfCampaign, w, workName } from '../../words';
import { Button, LinkButton, Notice, Page, Section } from '../parts';
import { AfterCampaign } from '../parts/AfterCampaign';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { CampaignFacts } from './CampaignFacts';
import { CampaignPapers } from './CampaignPapers';
import { CampaignSheet } from './CampaignSheet';
import { OfCampaign, type OpenFile } from './OfCampaign';
import { StepLadder } from './StepLadder';
import './campaign.css';

const words = w.campaign.overview;

/** One campaign: what now, what was left open, where each paper is. */
export function CampaignScreen({ campaign }: { readonly campaign: string }) {
  return <OfCampaign campaign={campaign}>{(file) => <Overview file={file} />}</OfCampaign>;
}

function Overview({ file }: { readonly file: OpenFile }) {
  const { record, campaign, planned, today } = file;
  const [open, setOpen] = useState(false);
  const names = namesOfCampaign(file);
  const steps = stepsOfCampaign(file);
  const now = steps.find(({ state }) => state === 'now');
  const leftOpen = steps.filter(({ state, step }) => state === 'left open' && step.id !== 'causes');
  const causes = causesFirst(zonesAt(record, today), planned.cause, today);
  const { body, thing } = campaign;
  return (
    <Page
      title={body.title}
      over={workName(record.sculpture)}
      back={{ to: pathTo.campaigns(body.sculpture), label: w.campaign.title }}
    >
      {body.givenUp && <Notice title={w.campaign.givenUp(body.givenUp)} />}
      {causes.waits && !body.ended && (
        <Notice
          kind="caution"
          title={w.campaign.causes.title}
          actions={<LinkButton to={pathTo.campaigns(body.sculpture)}>{w.campaign.causes.link}</LinkButton>}
        >
          <Reasons reasons={causes.reasons} />
        </Notice>
      )}
      {now && <Now file={file} now={now} />}
      {leftOpen.length > 0 && (
        <Section title={words.leftOpen} lead={words.leftOpenWhat}>
          <ul className="bare stack tight">
            {leftOpen.map(({ step, lacks }) => (
              <li key={step.id}>
                <p className="strong">{step.name}</p>
                <Reasons reasons={lacks} nameOf={names} label={step.name} />
              </li>
            ))}
          </ul>
        </Section>
      )}
      {body.ended && <Watch campaign={thing} />}
      <Section title={words.papers}>
        <CampaignPapers file={file} />
      </Section>
      <Section title={words.facts} actions={<Button onClick={() => setOpen(true)}>{words.change}</Button>}>
        <CampaignFacts file={file} />
      </Section>
      <Section title={words.steps} lead={words.stepsLead}>
        <StepLadder steps={steps} names={names} />
      </Section>
      <p className="soft">{words.defer}</p>
      <PrintRow />
      {open && (
        <CampaignSheet
          key={thing}
          record={record}
          planned={planned}
          campaign={campaign}
          onClose={() => setOpen(false)}
        />
      )}
    </Page>
  );
}

function Watch({ campaign }: { readonly campaign: string }) {
  const watch = useQuestion(watchOfCampaign(useDesk(), campaign));
  return watch ? <AfterCampaign watch={watch} /> : null;
}

function Now({ file, now }: { readonly file: OpenFile; readonly now: StepStanding }) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const { step, lacks, there } = now;
  const next = stepAfter(step.id);
  const names = namesOfCampaign(file);
  return (
    <section className="card stack step-now" aria-label={words.now}>
      <p className="page-over">{words.now}</p>
      <h2>{step.name}</h2>
      <p>{step.asks}</p>
      {step.decides && <p className="soft">{words.decides(step.decides)}</p>}
      {refused && <Notice kind="problem" title={refused} />}
      {lacks.length > 0 ? (
        <div>
          <p className="strong">{words.lacks}</p>
          <Reasons reasons={lacks} nameOf={names} label={words.lacks} />
        </div>
      ) : (
        <p className="soft">{words.nothing}</p>
      )}
      {there.length > 0 && (
        <div>
          <p className="strong">{words.there}</p>
          <Reasons reasons={there} nameOf={names} label={words.there} />
        </div>
      )}
      {next && (
        <div className="row not-printed">
          <Button
            kind={lacks.length > 0 ? 'plain' : 'main'}
            disabled={busy}
            onClick={() =>
              run(
                () => editPlanned(desk, 'campaign', file.campaign.thing, { step: next.id }),
                () => say(words.nextSaid(next.name)),
              )
            }
          >
            {lacks.length > 0 ? words.nextAllTheSame(next.name) : words.next(next.name)}
          </Button>
        </div>
      )}
    </section>
  );
}
