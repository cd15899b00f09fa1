import { plannedOfCollection } from '../../actions';
import { date, w } from '../../words';
import { useDesk, useQuestion } from '../shell';
import type { OpenFile } from './OfCampaign';

const words = w.campaign.sheet;

/** Days, what it follows, who answers for it; only what is known. */
export function CampaignFacts({ file }: { readonly file: OpenFile }) {
  const { campaign, planned } = file;
  const { body } = campaign;
  const common = useQuestion(plannedOfCollection(useDesk()));
  const option = planned.option.find(({ thing }) => thing === body.option)?.body.title;
  const decision = planned.decision.find(({ thing }) => thing === body.decision)?.body;
  const fund = [...planned.fund, ...(common?.fund ?? [])].find(({ thing }) => thing === body.fund)?.body.title;
  const day = (value: string | undefined) => value && date(value);
  const facts: readonly (readonly [string, string | undefined])[] = [
    [words.opened, date(body.opened)],
    [words.option, option],
    [words.decision, decision && `${decision.title}, ${date(decision.date)}`],
    [words.fund, fund],
    [words.began, day(body.began)],
    [words.ended, day(body.ended)],
    [words.accepted, day(body.accepted)],
    [words.warrantyUntil, day(body.warrantyUntil)],
    [words.warrantyWho, body.warrantyWho],
    [words.warrantyTerms, body.warrantyTerms],
    [words.note, body.note],
  ];
  return (
    <dl className="campaign-facts">
      {facts.map(
        ([name, value]) =>
          value && (
            <div key={name}>
              <dt className="soft">{name}</dt>
              <dd>{value}</dd>
            </div>
          ),
      )}
    </dl>
  );
}
