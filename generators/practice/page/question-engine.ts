import * as written from '../../quantities/written.ts';
import * as number from '../../questions/number.ts';
import type { FamilyData, QuestionPageWords } from './question-data.ts';
import { startQuestion } from './question.ts';

/** What the script that all families share leaves for that of one. */
export interface QuestionEngine {
  start(data: FamilyData): void;
  /** Modules that families use too, by their path below generators/. */
  parts: Readonly<Record<string, object>>;
}

/** Makes the engine ready; scripts of families, which come after it, find it under this name. */
export function provideEngine(words: QuestionPageWords): void {
  const engine: QuestionEngine = { start: (data) => startQuestion(data, words), parts: { 'quantities/written.ts': written, 'questions/number.ts': number } };
  Object.assign(globalThis, { slidewireQuestions: engine });
}
