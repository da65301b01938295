import type { VersionView } from '../view.ts';
import type { Questions } from './data.ts';
import { ASI, type QtiWords, qtiItem, scored } from './qti-item.ts';
import { document, element } from './xml.ts';

/** Namespace and schema of the manifest, and types of resources: the packages that 1EdTech publishes with QTI 3.0 (BPIG_Examples, BeginnersGuide_Examples). */
const MANIFEST = {
  xmlns: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
  'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
  'xsi:schemaLocation': 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd',
} as const;

interface File {
  identifier: string;
  path: string;
  type: string;
  content: string;
  needs: string[];
}

/** Every file of a package by its path: a test for each version, an item for each part, the drawings, the manifest. */
export function qtiPackage(data: Questions, views: readonly VersionView[], language: string, words: QtiWords): Record<string, string> {
  const files = data.versions.flatMap((version, v) => versionFiles(data.title, version, views[v]!, `v${v + 1}`, language, words));
  return Object.fromEntries([['imsmanifest.xml', manifest(files)], ...files.map(({ path, content }) => [path, content] as const)]);
}

function versionFiles(title: string, { name, questions }: Questions['versions'][number], view: VersionView, id: string, language: string, words: QtiWords): File[] {
  const items = questions.flatMap(({ number, parts, story }, i) =>
    parts.flatMap((part, p): File[] => {
      const identifier = `${id}-q${number}${parts.length > 1 ? `-${p + 1}` : ''}`;
      const svg = view.items[i]!.parts[p]!.figure?.svg;
      const drawn: File[] = svg === undefined ? [] : [{ identifier: `${identifier}-figure`, path: `items/${identifier}.svg`, type: 'webcontent', content: document(svg), needs: [] }];
      const content = qtiItem({ identifier, title: `${title}, ${name}, ${number} ${part.label}`.trim(), language, part, ...(story !== undefined && { story }), ...(svg !== undefined && { figure: `${identifier}.svg` }) }, words);
      return [{ identifier, path: `items/${identifier}.xml`, type: 'imsqti_item_xmlv3p0', content, needs: drawn.map((one) => one.identifier) }, ...drawn];
    }),
  );
  return [test(`${title}, ${name}`, id, items.filter(({ type }) => type !== 'webcontent'), questions.reduce((sum, one) => sum + one.marks, 0)), ...items];
}

/** The items of a version in their order; its score is the sum of theirs (after 1EdTech's examples BGtest and InteractionMixSachsen). */
function test(title: string, id: string, items: readonly File[], marks: number): File {
  const refs = items.map(({ identifier, path }) => element('qti-assessment-item-ref', { identifier, href: path }));
  const section = element('qti-assessment-section', { identifier: `${id}-section`, title, visible: 'true' }, ...refs);
  const part = element('qti-test-part', { identifier: `${id}-part`, 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' }, section);
  const total = element('qti-outcome-processing', {}, element('qti-set-outcome-value', { identifier: 'SCORE' }, element('qti-sum', {}, element('qti-test-variables', { 'variable-identifier': 'SCORE' }))));
  return { identifier: `${id}-test`, path: `${id}-test.xml`, type: 'imsqti_test_xmlv3p0', content: document(element('qti-assessment-test', { ...ASI, identifier: `${id}-test`, title }, ...scored(marks), part, total)), needs: items.map(({ identifier }) => identifier) };
}

function manifest(files: readonly File[]): string {
  const resources = files.map(({ identifier, path, type, needs }) =>
    element('resource', { identifier, type, href: path }, element('file', { href: path }), ...needs.map((identifierref) => element('dependency', { identifierref }))),
  );
  const metadata = element('metadata', {}, element('schema', {}, 'QTI Package'), element('schemaversion', {}, '3.0.1'));
  return document(element('manifest', { ...MANIFEST, identifier: 'slidewire-questions' }, metadata, element('organizations', {}), element('resources', {}, ...resources)));
}
