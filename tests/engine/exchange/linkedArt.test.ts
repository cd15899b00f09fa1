import jsonld from 'jsonld';
import { expect, it } from 'vitest';
import { linkedArt } from '../../../src/engine/exchange';
import { nameOf } from '../../../src/engine/record';
import { round, sculpture, uuid, zoneA } from '../../files/entries';
import { smallSurvey } from '../../files/smallSurvey';

interface Quad {
  readonly subject: { readonly value: string };
  readonly predicate: { readonly value: string };
  readonly object: { readonly termType: string; readonly value: string };
}

const crm = 'http://www.cidoc-crm.org/cidoc-crm/';
const rdfType = 'http://www.w3.org/1999/02/22-rdf-syntax-ns#type';

/**
 * Domain and range of each property used, narrowed to the classes used here: CIDOC CRM, version 7.1.3, "Properties" (definitions from
 * memory; a subclass stands for its class: E22 is an E18 Physical Thing and an E1, E14 and E16 are E13 and so E7 Activities).
 */
const activities = ['E14_Condition_Assessment', 'E16_Measurement', 'E11_Modification', 'E12_Production'];
const anything = undefined;
const properties: Readonly<Record<string, readonly [readonly string[] | undefined, readonly string[] | 'literal']>> = {
  P1_is_identified_by: [anything, ['E33_E41_Linguistic_Appellation', 'E42_Identifier']],
  P2_has_type: [anything, ['E55_Type']],
  'P4_has_time-span': [[...activities, 'E3_Condition_State'], ['E52_Time-Span']],
  P9_consists_of: [activities, activities],
  P14_carried_out_by: [activities, ['E21_Person', 'E39_Actor']],
  P31_has_modified: [['E11_Modification'], ['E22_Human-Made_Object']],
  P32_used_general_technique: [activities, ['E55_Type']],
  P34_concerned: [['E14_Condition_Assessment'], ['E22_Human-Made_Object']],
  P35_has_identified: [['E14_Condition_Assessment'], ['E3_Condition_State']],
  P39_measured: [['E16_Measurement'], ['E22_Human-Made_Object']],
  P40_observed_dimension: [['E16_Measurement'], ['E54_Dimension']],
  P45_consists_of: [['E22_Human-Made_Object'], ['E57_Material']],
  P46i_forms_part_of: [['E22_Human-Made_Object'], ['E22_Human-Made_Object']],
  P67i_is_referred_to_by: [anything, ['E33_Linguistic_Object']],
  P82a_begin_of_the_begin: [['E52_Time-Span'], 'literal'],
  P82b_end_of_the_end: [['E52_Time-Span'], 'literal'],
  P90_has_value: [['E54_Dimension'], 'literal'],
  P90a_has_lower_value_limit: [['E54_Dimension'], 'literal'],
  P90b_has_upper_value_limit: [['E54_Dimension'], 'literal'],
  P91_has_unit: [['E54_Dimension'], ['E58_Measurement_Unit']],
  P108i_was_produced_by: [['E22_Human-Made_Object'], ['E12_Production']],
  P126_employed: [['E11_Modification', 'E12_Production'], ['E57_Material']],
  P138i_has_representation: [anything, ['E36_Visual_Item']],
  P190_has_symbolic_content: [['E33_E41_Linguistic_Appellation', 'E42_Identifier', 'E33_Linguistic_Object'], 'literal'],
};

const quadsOf = async (): Promise<Quad[]> => {
  const { collection, entries } = smallSurvey();
  // No address may be needed to read it: the processor is given none.
  const documentLoader = (url: string) => Promise.reject(new Error(`asked for ${url}`));
  return (await jsonld.toRDF(linkedArt(collection, entries) as object, { documentLoader })) as unknown as Quad[];
};

it('an independent JSON-LD processor reads it without asking any address, and every statement fits the domain and range CRM gives', async () => {
  const quads = await quadsOf();
  const types = new Map(
    quads.filter((q) => q.predicate.value === rdfType).map((q) => [q.subject.value, q.object.value]),
  );
  const own = quads.filter((q) => q.predicate.value.startsWith(crm));
  expect(own.length).toBeGreaterThan(40);
  for (const { subject, predicate, object } of own) {
    const name = predicate.value.slice(crm.length);
    const [domain, range] = properties[name] ?? expect.fail(`${name} is not in the table`);
    const of = (value: string) => types.get(value)?.slice(crm.length);
    if (domain) expect(domain, `${name} of ${subject.value}`).toContain(of(subject.value));
    if (range === 'literal') expect(object.termType, name).toBe('Literal');
    else expect(range, `${name} to ${object.value}`).toContain(of(object.value));
  }
});

const stated = (quads: readonly Quad[], subject: string, property: string): string[] =>
  quads.filter((q) => q.subject.value === subject && q.predicate.value === crm + property).map((q) => q.object.value);

const urn = (thing: string) => `urn:patina-round:${thing}`;

it('tells of a round what it concerned, when, and what it identified; of a treatment what it modified', async () => {
  const quads = await quadsOf();
  expect(stated(quads, urn(round), 'P34_concerned')).toEqual([urn(sculpture)]);
  const visit = urn(nameOf.visit(round, zoneA));
  expect(stated(quads, urn(round), 'P9_consists_of')).toContain(visit);
  const [state] = stated(quads, visit, 'P35_has_identified');
  expect(stated(quads, state ?? '', 'P2_has_type')).toContain('urn:patina-round:kind/green-spots');
  const treatment = urn(nameOf.treatment(uuid(14)));
  expect(stated(quads, treatment, 'P31_has_modified')).toEqual([urn(zoneA)]);
  const [time] = stated(quads, treatment, 'P4_has_time-span');
  expect(stated(quads, time ?? '', 'P82a_begin_of_the_begin')).toEqual(['2026-06-01T00:00:00Z']);
  expect(stated(quads, time ?? '', 'P82b_end_of_the_end')).toEqual(['2026-06-30T23:59:59Z']);
});

it('holds nothing thought, nothing worked out, and no name that was left at home', () => {
  const { collection, entries } = smallSurvey();
  const text = JSON.stringify(
    linkedArt(
      collection,
      entries.filter((e) => e.kind !== 'name' && e.kind !== 'classSet'),
    ),
  );
  expect(text).not.toContain('The pond keeps it damp');
  expect(text).not.toContain('Ödön');
});
