import { expect, test } from 'vitest';
import { qtiPackage } from '../../generators/papers/export/qti-package.ts';
import { describeWithPython, python } from '../outside.ts';
import { paperOfEveryForm } from '../papers/every-form.ts';
import { ASI, PACKAGE, type Shown } from './qti-examples.ts';

const NAMESPACES: Readonly<Record<string, Readonly<Record<string, Shown>>>> = {
  'http://www.imsglobal.org/xsd/imsqtiasi_v3p0': ASI,
  'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1': PACKAGE,
};

interface Element {
  file: string;
  space: string;
  name: string;
  attributes: Record<string, string>;
  inside: string[];
  text: string;
}

/** Every element of every file but the drawings, by an XML parser that knows of namespaces. */
const READ = `
import json, sys
import xml.etree.ElementTree as ET
prefixes = {'http://www.w3.org/2001/XMLSchema-instance': 'xsi:', 'http://www.w3.org/XML/1998/namespace': 'xml:'}
def parted(tag):
    return tag[1:].split('}') if tag.startswith('{') else ['', tag]
def named(attribute):
    space, name = parted(attribute)
    return (prefixes[space] if space else '') + name
out = []
for file, content in json.load(sys.stdin).items():
    if file.endswith('.svg'): continue
    for element in ET.fromstring(content.encode()).iter():
        space, name = parted(element.tag)
        text = (element.text or '') + ''.join(child.tail or '' for child in element)
        out.append(dict(file=file, space=space, name=name, attributes={named(k): v for k, v in element.attrib.items()}, inside=[parted(child.tag)[1] for child in element], text=text.strip()))
print(json.dumps(out))
`;

describeWithPython(['xml.etree.ElementTree'], 'a QTI package beside the examples that 1EdTech publishes', () => {
  const { data, views, words } = paperOfEveryForm();
  const elements = python<Element[]>(READ, qtiPackage(data, views, 'en', words));
  const shownOf = ({ space, name }: Element) => NAMESPACES[space]?.[name];
  const where = ({ file, name }: Element) => `${file}: ${name}`;

  test('has no element and no attribute that they do not show, and every value in their form', () => {
    for (const element of elements) {
      const shown = shownOf(element);
      expect(shown, where(element)).toBeDefined();
      for (const [name, value] of Object.entries(element.attributes)) {
        expect(shown!.attributes[name], `${where(element)} ${name}`).toBeDefined();
        expect(value, `${where(element)} ${name}`).toMatch(shown!.attributes[name]!);
      }
    }
  });

  test('has every attribute that they never leave out', () => {
    for (const element of elements) expect(Object.keys(element.attributes), where(element)).toEqual(expect.arrayContaining([...shownOf(element)!.always]));
  });

  test('has inside each element what they have, in their order', () => {
    for (const element of elements) {
      const { inside } = shownOf(element)!;
      if (inside === 'text') expect([element.inside, element.text !== ''], where(element)).toEqual([[], true]);
      else expect(element.inside.join(' '), where(element)).toMatch(inside);
    }
  });

  test('has every element and every attribute of which facts were taken down', () => {
    for (const [space, all] of Object.entries(NAMESPACES)) {
      for (const [name, { attributes }] of Object.entries(all)) {
        const own = elements.filter((one) => one.space === space && one.name === name);
        const seen = new Set(own.flatMap((one) => Object.keys(one.attributes)));
        expect([...seen].sort(), name).toEqual(Object.keys(attributes).sort());
        expect(own.length, name).toBeGreaterThan(0);
      }
    }
  });

  test('sets and reads only what it declares', () => {
    for (const file of new Set(elements.map((one) => one.file))) {
      const own = elements.filter((one) => one.file === file);
      const ids = (names: string[], attribute = 'identifier') => own.filter(({ name }) => names.includes(name)).map(({ attributes }) => attributes[attribute]!);
      const responses = ids(['qti-response-declaration']);
      const outcomes = ids(['qti-outcome-declaration']);
      expect([...new Set(responses)]).toEqual(responses);
      expect([...responses, ...outcomes], file).toEqual(expect.arrayContaining(ids(['qti-variable'])));
      expect(outcomes, file).toEqual(expect.arrayContaining([...ids(['qti-set-outcome-value']), ...ids(['qti-modal-feedback'], 'outcome-identifier')]));
      expect(ids(['qti-choice-interaction', 'qti-text-entry-interaction', 'qti-extended-text-interaction'], 'response-identifier'), file).toEqual(responses);
    }
  });
});
