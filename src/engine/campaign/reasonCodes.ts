import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const campaignReasons = {
  // Causes first.
  'campaign: cause open': ['cause', 'zones'],
  'campaign: cause being removed': ['cause', 'zones'],
  'campaign: cause removed lately': ['cause', 'date', 'until'],
  'campaign: cause cannot be removed': ['cause'],
  'campaign: nobody looked for causes': [],
  'campaign: causes settled': ['count'],
  // The schedule of quantities against the record.
  'campaign: no schedule': [],
  'campaign: zones without a line': ['zones'],
  'campaign: zone ended': ['letter'],
  'campaign: area changed since': ['letter', 'before', 'now'],
  'campaign: insert without protection': ['insert'],
  'campaign: schedule of so many lines': ['count'],
  // Bids.
  'campaign: rate on the schedule': ['low', 'high'],
  'campaign: rate on own area': ['measured'],
  'campaign: area measured otherwise': ['measured', 'low', 'high'],
  'campaign: price out of line': ['times', 'factor'],
  'campaign: price far below': ['times', 'factor'],
  'campaign: priced at nothing': [],
  'campaign: too few prices to compare': ['count', 'least'],
  'campaign: lines not priced': ['count'],
  'campaign: lines no longer in the schedule': ['count'],
  'campaign: insert protection not priced': ['count'],
  'campaign: bid past its day': ['date'],
  'campaign: bid valid until': ['date', 'days'],
  'campaign: bid without a last day': [],
  'campaign: site not visited': [],
  // Score sheets.
  'campaign: sheets that count': ['count', 'all'],
  'campaign: no price points': [],
  'campaign: price points on shared lines': ['lines', 'all'],
  'campaign: one scorer tells none apart': ['bid', 'gap'],
  'campaign: scorers differ on the order': ['bid', 'gap'],
  'campaign: totals too close': ['bid', 'gap', 'apart'],
  'campaign: bids so many': ['count'],
  'campaign: no bids': [],
  'campaign: none taken': [],
  'campaign: bid taken': ['bid'],
  // Papers.
  'campaign: paper not looked through': ['of'],
  'campaign: paper lacks': ['of', 'count'],
  'campaign: paper whole': ['of'],
  'campaign: last payment waits': [],
  // Steps.
  'campaign: no proposal': [],
  'campaign: no option chosen': [],
  'campaign: option or decision written': [],
  'campaign: no fund': [],
  'campaign: fund there': [],
  'campaign: no access sheet': [],
  'campaign: access sheet there': [],
  'campaign: insert without a way': ['insert'],
  'campaign: insert limit without a name': ['insert'],
  'campaign: inserts provided for': ['count'],
  'campaign: no round before': [],
  'campaign: round before': ['date'],
  'campaign: not approved': ['of'],
  'campaign: approved': ['of', 'date'],
  'campaign: refused': ['of', 'date'],
  'campaign: no colour card': [],
  'campaign: colour card lacks photos': ['count'],
  'campaign: colour card': ['date'],
  'campaign: no layers written': [],
  'campaign: layers written': ['count'],
  'campaign: no wax written': [],
  'campaign: wax written': ['date'],
  'campaign: no round after': [],
  'campaign: round after': ['date'],
  'campaign: no warranty written': [],
  'campaign: warranty until': ['date'],
  'campaign: warranty over': ['date'],
  // What is not kept as it was entered.
  'campaign: days out of order': ['earlier', 'later', 'first', 'last'],
  'campaign: say when it changed': [],
  'campaign: say why': [],
  'campaign: line without an amount': ['line'],
  'campaign: line range out of order': ['line'],
  'campaign: line twice': ['line'],
  'campaign: weights come to': ['sum', 'whole'],
  'campaign: criterion twice': [],
  'campaign: criterion without a name': [],
  'campaign: weights changed after a bid': [],
  'campaign: mark twice': [],
  'campaign: sheet was handed in': ['date'],
  'campaign: sheet not whole': ['count'],
  'campaign: decided by nobody': [],
  'campaign: yes without a signature': [],
  'campaign: signed before': ['date'],
  'campaign: card without words': [],
  'campaign: card without a zone': [],
} as const satisfies Record<string, readonly string[]>;

export type CampaignReason = keyof typeof campaignReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends CampaignReason>(
  code: C,
  ...[params]: (typeof campaignReasons)[C] extends readonly []
    ? []
    : [Record<(typeof campaignReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
