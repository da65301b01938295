import { nameWithSitting } from '../../marking/feedback.ts';
import type { TypingData } from './data.ts';

/** The list to choose a student from; who is complete is said in it. */
export function studentList(select: HTMLSelectElement, { sheets, words }: TypingData, isComplete: (place: number) => boolean) {
  const label = (place: number) => {
    const sheet = sheets[place]!;
    return `${sheet.roll} ${nameWithSitting(sheet, words)}`;
  };
  const line = (place: number) => (isComplete(place) ? `${label(place)}, ${words.typing.complete}` : label(place));
  select.append(...sheets.map((_, place) => new Option(line(place), String(place))));
  return {
    label,
    choose: (place: number) => (select.value = String(place)),
    refresh: (place: number) => (select.options[place]!.textContent = line(place)),
  };
}
