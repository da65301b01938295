import { fill } from '../../quantities/spoken.ts';
import type { TypingData } from './data.ts';

/** The list to choose a student from; who is complete is said in it. */
export function studentList(select: HTMLSelectElement, { sheets, words: { typing } }: TypingData, isComplete: (place: number) => boolean) {
  const label = (place: number) => {
    const { roll, name, sitting } = sheets[place]!;
    return `${roll} ${name}${sitting > 1 ? `, ${fill(typing.sitting, { sitting })}` : ''}`;
  };
  const line = (place: number) => (isComplete(place) ? `${label(place)}, ${typing.complete}` : label(place));
  select.append(...sheets.map((_, place) => new Option(line(place), String(place))));
  return {
    label,
    choose: (place: number) => (select.value = String(place)),
    refresh: (place: number) => (select.options[place]!.textContent = line(place)),
  };
}
