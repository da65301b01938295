import { streams } from '../random.ts';

/** A place in the laboratory with what is done there. */
export interface Station<Combination> {
  number: number;
  combination: Combination;
}

export interface Lot<Candidate, Combination> {
  candidate: Candidate;
  station: Station<Combination>;
}

/** Candidates who work at the same time, with the stations they are drawn to. */
export interface Batch<Candidate, Combination> {
  number: number;
  stations: Station<Combination>[];
  lots: Lot<Candidate, Combination>[];
}

/**
 * Divides candidates, in their order, into batches of nearly equal size, lays out a station for each, and draws who works
 * where. Combinations of task and wires are used evenly, and no two stations side by side have the same where there are two.
 */
export function drawLots<Candidate, Combination>(candidates: readonly Candidate[], combinations: readonly Combination[], most: number, secret: string): Batch<Candidate, Combination>[] {
  const count = Math.ceil(candidates.length / most);
  return Array.from({ length: count }, (_, i) => {
    const own = candidates.slice(Math.floor((i * candidates.length) / count), Math.floor(((i + 1) * candidates.length) / count));
    const draw = streams(secret).within('practical', i + 1);
    const round = draw.of('stations').shuffle(combinations);
    const stations = own.map((_, place) => ({ number: place + 1, combination: round[place % round.length]! }));
    const drawn = draw.of('lots').shuffle(stations);
    return { number: i + 1, stations, lots: own.map((candidate, place) => ({ candidate, station: drawn[place]! })) };
  });
}
