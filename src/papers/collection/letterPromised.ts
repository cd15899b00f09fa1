import type { PaperSource } from '../../engine/reckoning';
import { campaignStepOf, groundsTopicOf } from '../../engine/trade';
import { date, w } from '../../words';
import { list, type PaperPiece, section } from '../layout';
import { nameOfWork, thingsIn, thingsOfAll } from '../reading';

const words = w.paperLetter;

/** Campaigns that go on, warranties that run, what was agreed with the grounds, what is away. */
export const promised = (source: PaperSource): PaperPiece => {
  const { works, today } = source;
  const lines = works.flatMap((work) => {
    const name = nameOfWork(work);
    const campaigns = thingsIn(work.within, 'campaign').map(({ body }) => body);
    return [
      ...campaigns
        .filter(({ givenUp, accepted }) => !givenUp && !accepted)
        .map(({ title, step }) => words.campaign(name, title, campaignStepOf(step)?.name ?? step)),
      ...campaigns
        .filter(({ warrantyUntil }) => (warrantyUntil ?? '') >= today)
        .map(({ warrantyUntil = '', warrantyWho = '', warrantyTerms = '' }) =>
          words.warranty(name, warrantyWho, date(warrantyUntil), warrantyTerms),
        ),
      ...thingsIn(work.within, 'move')
        .filter(({ body }) => body.sort === 'loan out' && !body.back)
        .map(({ body }) => words.loan(name, body.to, body.backDue ? date(body.backDue) : '')),
    ];
  });
  const agreements = thingsOfAll(source, 'groundsAgreement')
    .filter(({ body }) => !body.ended || body.ended > today)
    .map(({ body }) =>
      words.agreement(
        groundsTopicOf(body.topic)?.name ?? body.topic,
        body.text,
        body.who.name ? `${body.who.role} (${body.who.name})` : body.who.role,
        date(body.agreed),
      ),
    );
  const all = [...lines, ...agreements];
  return all.length > 0 && section(words.underWay, list(all));
};
