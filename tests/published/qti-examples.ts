/*
 * What the examples that 1EdTech publishes with QTI 3.0 show of the elements that Slidewire writes: attributes, what
 * stands inside and in which order. Facts alone were taken down. `from` names the examples in the repository
 * 1EdTech/qti-examples.
 */

export interface Shown {
  from: string;
  /** Every attribute that the examples show, with the form of its value. */
  attributes: Readonly<Record<string, RegExp>>;
  /** Those of them that stand there in every example. */
  always: readonly string[];
  /** The elements inside, in their order, as a pattern; 'text' where it holds a value or words. */
  inside: RegExp | 'text';
}

const NAME = /^[A-Za-z_][\w.-]*$/;
const TEXT = /\S/;
const FLAG = /^(true|false)$/;
const NUMBER = /^-?\d+(\.\d+)?(e-?\d+)?$/;
const SCHEMA = /^http:\/\/www\.imsglobal\.org\/xsd\/\S+ https:\/\/purl\.imsglobal\.org\/spec\/qti\/v3p0\/schema\/xsd\/\S+\.xsd$/;
const EMPTY = /^$/;
const DECLARED = { identifier: NAME, cardinality: /^single$/, 'base-type': /^(float|string|identifier)$/ };
const VALUE = 'qti-(variable|base-value|sum)';
const LOGIC = 'qti-(match|equal|and|not|is-null)';
const SETS = '( qti-set-outcome-value)+';
const BLOCK = '(p|div|qti-choice-interaction|qti-extended-text-interaction|qti-rubric-block)';

/** Elements of the namespace of items and tests. */
export const ASI: Readonly<Record<string, Shown>> = {
  'qti-assessment-item': {
    from: 'Example01-modalFeedback, essay',
    attributes: { 'xsi:schemaLocation': SCHEMA, identifier: NAME, title: TEXT, adaptive: FLAG, 'time-dependent': FLAG, 'xml:lang': /^[a-z]{2}(-[A-Z]{2})?$/ },
    always: ['xsi:schemaLocation', 'identifier', 'title', 'time-dependent'],
    inside: /^(qti-response-declaration )+(qti-outcome-declaration )+qti-item-body( qti-response-processing)?( qti-modal-feedback)*$/,
  },
  'qti-response-declaration': { from: 'Example01-modalFeedback, template_digging', attributes: DECLARED, always: ['identifier', 'cardinality', 'base-type'], inside: /^(qti-correct-response)?$/ },
  'qti-correct-response': { from: 'Example01-modalFeedback', attributes: {}, always: [], inside: /^qti-value$/ },
  'qti-value': { from: 'Example01-modalFeedback', attributes: {}, always: [], inside: 'text' },
  'qti-outcome-declaration': {
    from: 'Example01-modalFeedback (normal-maximum), essay (external-scored)',
    attributes: { ...DECLARED, 'normal-maximum': NUMBER, 'external-scored': /^human$/ },
    always: ['identifier', 'cardinality', 'base-type'],
    inside: /^(qti-default-value)?$/,
  },
  'qti-default-value': { from: 'Example01-modalFeedback', attributes: {}, always: [], inside: /^qti-value$/ },
  'qti-item-body': { from: 'BG007, BG011, essay, rubric_block', attributes: {}, always: [], inside: new RegExp(`^${BLOCK}( ${BLOCK})*$`) },
  p: { from: 'BG007, template_digging', attributes: {}, always: [], inside: /^(qti-text-entry-interaction)?$/ },
  div: { from: 'BG011', attributes: {}, always: [], inside: /^img$/ },
  img: { from: 'BG011', attributes: { src: TEXT, alt: TEXT }, always: ['src', 'alt'], inside: EMPTY },
  'qti-choice-interaction': {
    from: 'Example01-modalFeedback, BG007',
    attributes: { 'response-identifier': NAME, shuffle: FLAG, 'max-choices': /^1$/ },
    always: ['response-identifier', 'max-choices'],
    inside: /^qti-simple-choice( qti-simple-choice)+$/,
  },
  'qti-simple-choice': { from: 'BG007', attributes: { identifier: NAME }, always: ['identifier'], inside: 'text' },
  'qti-text-entry-interaction': { from: 'template_digging', attributes: { 'response-identifier': NAME, 'expected-length': /^\d+$/ }, always: ['response-identifier'], inside: EMPTY },
  'qti-extended-text-interaction': { from: 'BG011, essay', attributes: { 'response-identifier': NAME }, always: ['response-identifier'], inside: EMPTY },
  'qti-rubric-block': { from: 'rubric_block', attributes: { view: /^scorer$/, use: /^scoring$/ }, always: ['view', 'use'], inside: /^qti-content-body$/ },
  'qti-content-body': { from: 'rubric_block', attributes: {}, always: [], inside: /^p( p)*$/ },
  'qti-response-processing': { from: 'TextEntrynumeric_2040297025', attributes: {}, always: [], inside: /^qti-response-condition( qti-response-condition)*$/ },
  'qti-response-condition': { from: 'Example01-modalFeedback, SineRule-002-maths', attributes: {}, always: [], inside: /^qti-response-if( qti-response-else-if)*( qti-response-else)?$/ },
  'qti-response-if': { from: 'Example01-modalFeedback', attributes: {}, always: [], inside: new RegExp(`^${LOGIC}${SETS}$`) },
  'qti-response-else-if': { from: 'Choicesingle_853928446', attributes: {}, always: [], inside: new RegExp(`^${LOGIC}${SETS}$`) },
  'qti-response-else': { from: 'Example01-modalFeedback', attributes: {}, always: [], inside: /^qti-set-outcome-value( qti-set-outcome-value)*$/ },
  'qti-set-outcome-value': { from: 'Example01-modalFeedback, TextEntrynumeric_2040297025', attributes: { identifier: NAME }, always: ['identifier'], inside: new RegExp(`^${VALUE}$`) },
  'qti-match': { from: 'Example01-modalFeedback', attributes: {}, always: [], inside: /^qti-variable qti-correct$/ },
  'qti-and': { from: 'TextEntrynumeric_2040297025', attributes: {}, always: [], inside: new RegExp(`^${LOGIC}( ${LOGIC})*$`) },
  'qti-not': { from: 'TextEntrynumeric_2040297025', attributes: {}, always: [], inside: /^qti-is-null$/ },
  'qti-is-null': { from: 'TextEntrynumeric_2040297025', attributes: {}, always: [], inside: /^qti-variable$/ },
  'qti-equal': {
    from: 'SineRule-002-maths (absolute, one tolerance)',
    attributes: { 'tolerance-mode': /^absolute$/, tolerance: /^(?!0$)\d+(\.\d+)?(e-?\d+)?$/ },
    always: ['tolerance-mode', 'tolerance'],
    inside: /^qti-variable qti-(variable|base-value)$/,
  },
  'qti-sum': { from: 'TextEntrynumeric_2040297025, InteractionMixSachsen_1901710679', attributes: {}, always: [], inside: /^(qti-variable qti-base-value|qti-test-variables)$/ },
  'qti-variable': { from: 'Example01-modalFeedback', attributes: { identifier: NAME }, always: ['identifier'], inside: EMPTY },
  'qti-correct': { from: 'Example01-modalFeedback', attributes: { identifier: NAME }, always: ['identifier'], inside: EMPTY },
  'qti-base-value': { from: 'Example01-modalFeedback, SineRule-002-maths', attributes: { 'base-type': /^(float|identifier)$/ }, always: ['base-type'], inside: 'text' },
  'qti-modal-feedback': {
    from: 'Example01-modalFeedback',
    attributes: { 'outcome-identifier': NAME, 'show-hide': /^show$/, identifier: NAME },
    always: ['outcome-identifier', 'show-hide', 'identifier'],
    inside: /^qti-content-body$/,
  },
  'qti-assessment-test': {
    from: 'BGtest, InteractionMixSachsen_1901710679',
    attributes: { 'xsi:schemaLocation': SCHEMA, identifier: NAME, title: TEXT },
    always: ['xsi:schemaLocation', 'identifier', 'title'],
    inside: /^(qti-outcome-declaration )*qti-test-part( qti-outcome-processing)?$/,
  },
  'qti-test-part': {
    from: 'BGtest',
    attributes: { identifier: NAME, 'navigation-mode': /^nonlinear$/, 'submission-mode': /^individual$/ },
    always: ['identifier', 'navigation-mode', 'submission-mode'],
    inside: /^qti-assessment-section$/,
  },
  'qti-assessment-section': { from: 'BGtest', attributes: { identifier: NAME, title: TEXT, visible: FLAG }, always: ['identifier', 'title', 'visible'], inside: /^qti-assessment-item-ref( qti-assessment-item-ref)*$/ },
  'qti-assessment-item-ref': { from: 'BGtest', attributes: { identifier: NAME, href: TEXT }, always: ['identifier', 'href'], inside: EMPTY },
  'qti-outcome-processing': { from: 'InteractionMixSachsen_1901710679', attributes: {}, always: [], inside: /^qti-set-outcome-value$/ },
  'qti-test-variables': { from: 'InteractionMixSachsen_1901710679', attributes: { 'variable-identifier': NAME }, always: ['variable-identifier'], inside: EMPTY },
};

/** Elements of the namespace of the manifest. */
export const PACKAGE: Readonly<Record<string, Shown>> = {
  manifest: { from: 'QTI3_BPIG_Examples', attributes: { 'xsi:schemaLocation': SCHEMA, identifier: NAME }, always: ['xsi:schemaLocation', 'identifier'], inside: /^metadata organizations resources$/ },
  metadata: { from: 'QTI3_BPIG_Examples', attributes: {}, always: [], inside: /^schema schemaversion$/ },
  schema: { from: 'QTI3_BPIG_Examples', attributes: {}, always: [], inside: 'text' },
  schemaversion: { from: 'QTI3_BPIG_Examples', attributes: {}, always: [], inside: 'text' },
  organizations: { from: 'QTI3_BPIG_Examples', attributes: {}, always: [], inside: EMPTY },
  resources: { from: 'QTI3_BPIG_Examples', attributes: {}, always: [], inside: /^resource( resource)*$/ },
  resource: {
    from: 'QTI3_BPIG_Examples (items, test, SVG as webcontent), BBQsTest (a test that depends on its items)',
    attributes: { identifier: NAME, type: /^(imsqti_item_xmlv3p0|imsqti_test_xmlv3p0|webcontent)$/, href: TEXT },
    always: ['identifier', 'type', 'href'],
    inside: /^file( dependency)*$/,
  },
  file: { from: 'QTI3_BPIG_Examples', attributes: { href: TEXT }, always: ['href'], inside: EMPTY },
  dependency: { from: 'QTI3_BPIG_Examples', attributes: { identifierref: NAME }, always: ['identifierref'], inside: EMPTY },
};
