import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { COLUMNS, csv } from '../../generators/papers/export/csv.ts';
import { questionsJsonSchema, questionsSchema } from '../../generators/papers/export/data.ts';
import { qtiPackage } from '../../generators/papers/export/qti-package.ts';
import { escapeXml } from '../../generators/papers/export/xml.ts';
import { zip } from '../../generators/press/zip.ts';
import { describeWithPython, python } from '../outside.ts';
import { paperOfEveryForm } from './every-form.ts';

const { words, views, table, data, parts } = paperOfEveryForm();

test('data for every form fit the schema that is written beside them', () => {
  expect(questionsSchema.parse(JSON.parse(JSON.stringify(data)))).toEqual(data);
});

/** Validates with an implementation of JSON Schema that shares no code with what wrote the schema. */
const VALIDATE = `
import json, sys
from jsonschema import Draft202012Validator
given = json.load(sys.stdin)
Draft202012Validator.check_schema(given['schema'])
validator = Draft202012Validator(given['schema'])
def spoilt(entry, value):
    copy = json.loads(json.dumps(given['data']))
    copy['versions'][0]['questions'][0]['parts'][0][entry] = value
    return not validator.is_valid(copy)
undescribed = []
def walk(schema, path):
    for name, inner in schema.get('properties', {}).items():
        if 'description' not in inner: undescribed.append(path + name)
        walk(inner, path + name + '.')
    if 'items' in schema: walk(schema['items'], path)
walk(given['schema'], '')
print(json.dumps(dict(errors=[e.message for e in validator.iter_errors(given['data'])], refused=[spoilt('marks', -1), spoilt('marks', 'two'), spoilt('form', 'essay'), spoilt('other', 1)], undescribed=undescribed)))
`;

describeWithPython(['jsonschema'], 'the JSON Schema beside the data', () => {
  const { errors, refused, undescribed } = python<{ errors: string[]; refused: boolean[]; undescribed: string[] }>(VALIDATE, { schema: questionsJsonSchema(), data });

  test('is a schema of draft 2020-12 that takes the data and nothing that is not of their form', () => {
    expect(errors).toEqual([]);
    expect(refused).toEqual([true, true, true, true]);
  });

  test('says of every entry what it holds', () => {
    expect(undescribed).toEqual([]);
  });
});

test('marks of parts and of questions add up to those of the paper', () => {
  for (const { questions: list } of data.versions) {
    expect(list.reduce((sum, one) => sum + one.marks, 0)).toBe(table.total);
    for (const one of list) expect(one.parts.reduce((sum, part) => sum + part.marks, 0)).toBe(one.marks);
  }
});

test('the marks of lines and answers are those of the question, and of its parts', () => {
  for (const item of views.flatMap(({ items }) => items)) {
    for (const { form, marks, view, asked, figure } of item.parts) {
      if (form === 'choice') continue;
      const lines = view.steps.reduce((sum, step) => sum + step.marks, 0) + view.answers.length + view.verdicts.length + (figure ? 1 : 0);
      expect(lines, `${view.family} ${view.direction}`).toBe(marks);
      if (asked.length > 0) expect(asked.reduce((sum, part) => sum + part.marks, 0), `${view.family} ${view.direction}`).toBe(marks);
    }
  }
});

test('a reading that is to be taken off a figure stands nowhere in the question', () => {
  const drawn = views.flatMap(({ items }) => items.flatMap((item) => item.parts)).filter(({ figure }) => figure);
  expect(drawn.length).toBeGreaterThan(5);
  for (const { view, figure } of drawn) {
    const text = parts.find((part) => part.figure === figure!.seen && part.family === view.family)!.text;
    for (const { value } of figure!.readings) expect(text).not.toContain(value.text);
    for (const symbol of figure!.reads) expect(text).toContain(symbol.text);
  }
});

test('CSV has a row for each part, the same number of cells in each, and no cell that begins a formula: a minus sign before figures alone is a number', () => {
  const rows = parse(csv(data)) as string[][];
  expect(rows[0]).toEqual([...COLUMNS]);
  expect(rows).toHaveLength(1 + parts.length);
  for (const row of rows) expect(row.filter((cell) => /^[=+\-@\s]/.test(cell) && !Number.isFinite(Number(cell)))).toEqual([]);
});

test('XML has no letter that would end it, and none that it has no place for', () => {
  expect(escapeXml('a<b & "c" \u0007>')).toBe('a&lt;b &amp; &quot;c&quot; &gt;');
});

interface Read {
  files: string[];
  broken: string[];
  hrefs: string[];
  refs: string[];
  items: { id: string; scored: string; choices: string[]; correct: string[]; types: string[]; feedback: string[]; entries: number; set: string[] }[];
}

/** Opens the archive with Python's zipfile, which checks every sum, and reads every file with its XML parser. */
const READ = `
import base64, io, json, sys, zipfile
import xml.etree.ElementTree as ET
archive = zipfile.ZipFile(io.BytesIO(base64.b64decode(json.load(sys.stdin))))
assert archive.testzip() is None
A = '{http://www.imsglobal.org/xsd/imsqtiasi_v3p0}'
M = '{http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1}'
out = dict(files=archive.namelist(), broken=[], hrefs=[], refs=[], items=[])
for name in archive.namelist():
    try:
        root = ET.fromstring(archive.read(name))
    except ET.ParseError as error:
        out['broken'].append(name + ': ' + str(error))
        continue
    if root.tag == M + 'manifest':
        ids = [r.get('identifier') for r in root.iter(M + 'resource')]
        assert len(set(ids)) == len(ids)
        for d in root.iter(M + 'dependency'): assert d.get('identifierref') in ids
        out['hrefs'] = [r.get('href') for r in root.iter(M + 'resource')]
    if root.tag == A + 'qti-assessment-test':
        out['refs'] += [r.get('href') for r in root.iter(A + 'qti-assessment-item-ref')]
    if root.tag == A + 'qti-assessment-item':
        order = [child.tag.replace(A, '') for child in root]
        assert order == sorted(order, key=['qti-response-declaration', 'qti-outcome-declaration', 'qti-item-body', 'qti-response-processing', 'qti-modal-feedback'].index), order
        out['items'].append(dict(
            id=root.get('identifier'),
            scored=next((o.get('external-scored') or 'machine' for o in root.iter(A + 'qti-outcome-declaration') if o.get('identifier') == 'SCORE')),
            choices=[c.get('identifier') for c in root.iter(A + 'qti-simple-choice')],
            correct=[v.text for v in root.iterfind(A + 'qti-response-declaration/' + A + 'qti-correct-response/' + A + 'qti-value')],
            types=[r.get('base-type') for r in root.iter(A + 'qti-response-declaration')],
            feedback=[f.get('identifier') for f in root.iter(A + 'qti-modal-feedback')],
            entries=len(list(root.iter(A + 'qti-text-entry-interaction'))),
            set=[b.text for s in root.iter(A + 'qti-set-outcome-value') if s.get('identifier') == 'FEEDBACK' for b in s.iter(A + 'qti-base-value')]))
print(json.dumps(out))
`;

describeWithPython(['zipfile', 'xml.etree.ElementTree'], 'a QTI package', () => {
  const files = qtiPackage(data, views, 'en', words);
  const read = python<Read>(READ, Buffer.from(zip(files)).toString('base64'));

  test('is a sound archive of well-formed XML, whose manifest names every other file once', () => {
    expect(read.files).toEqual(Object.keys(files));
    expect(read.broken).toEqual([]);
    expect([...read.hrefs].sort()).toEqual(read.files.filter((name) => name !== 'imsmanifest.xml').sort());
    expect(read.refs).toEqual(read.files.filter((name) => name.startsWith('items/') && name.endsWith('.xml')));
    expect(read.items).toHaveLength(parts.length);
  });

  test('has the right letter, and feedback for every option', () => {
    read.items.forEach((item, i) => {
      const { options } = parts[i]!;
      if (options.length === 0) return;
      expect(item.choices).toEqual(options.map(({ letter }) => letter));
      expect(item.correct).toEqual([options.find(({ right }) => right)!.letter]);
      expect([...item.feedback].sort()).toEqual(item.choices);
    });
  });

  test('has an entry for every number that is asked, and feedback for every slip', () => {
    const numeric = read.items.flatMap((item, i) => (parts[i]!.options.length === 0 && parts[i]!.answers.length > 0 && parts[i]!.words.length === 0 ? [{ item, part: parts[i]! }] : []));
    expect(numeric.length).toBeGreaterThan(50);
    for (const { item, part } of numeric) {
      expect(item.entries).toBe(part.answers.length);
      expect(item.types).toEqual(part.answers.map(() => 'float'));
      expect(item.feedback).toHaveLength(2 + part.slips.length);
      for (const id of item.set) expect(item.feedback).toContain(id);
    }
  });

  test('says how a power of ten is typed where an answer has one, and nowhere else', () => {
    const paths = read.files.filter((name) => name.startsWith('items/') && name.endsWith('.xml'));
    const told = paths.filter((path) => files[path]!.includes(words.tens));
    const powers = paths.filter((_, i) => parts[i]!.form !== 'choice' && parts[i]!.words.length === 0 && parts[i]!.answers.some(({ shown }) => shown.includes('× 10')));
    expect(told).toEqual(powers);
    expect(told.length).toBeGreaterThan(0);
  });

  test('leaves answers in words to a person', () => {
    const inWords = read.items.filter((_, i) => parts[i]!.form === 'words');
    expect(inWords.length).toBeGreaterThan(0);
    for (const { scored } of inWords) expect(scored).toBe('human');
  });
});
