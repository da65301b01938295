/** Where something stands on a scale; {number} is an engraved one, {n} and {next} count small divisions from it. */
export interface StandingWords {
  atNumber: string;
  atMark: string;
  between: string;
  midway: string;
}

/** Every word on or about a drawing, as content/en/figures.yaml holds them. {places} are filled by the drawing. */
export interface FigureWords {
  circuit: CircuitWords;
  standing: StandingWords;
  /** {from}, {to}, {where} */
  metreScale: string;
  /** {leftFrom}, {leftTo}, {left}, {rightFrom}, {rightTo}, {right} */
  rule: string;
  screwGauge: ScrewGaugeWords;
  plugBox: { seen: string; none: string; in: string; out: string; unit: string };
  dial: { seen: string; zero: string; side: string; stop: string; left: string; right: string };
  /** {from}, {to}, {where} */
  thermometer: string;
  graph: GraphWords;
  /** Captions of the gallery, by figure. */
  gallery: Record<string, string>;
}

export interface ScrewGaugeWords {
  /** {main}, {circular}, {first}, {last} */
  seen: string;
  /** The last mark uncovered above the reference line: {number}, {n}. */
  atNumber: string;
  atMark: string;
  /** No mark uncovered. */
  covered: string;
  /** Below the line, right of that mark; only where the pitch is half a millimetre. */
  half: string;
  noHalf: string;
  circularNumber: string;
  circularLine: string;
}

/** Letters of the diagram; the wire's ends and its scale run from `start` (0 cm) to `end` (100 cm). */
export interface CircuitLetters {
  start: string;
  end: string;
  jockey: string;
  centre: string;
  galvanometer: string;
}

export interface CircuitWords {
  letters: CircuitLetters;
  /** Names written beside the parts. */
  names: Record<'known' | 'unknown' | 'strip' | 'protective' | 'galvanometer' | 'jockey' | 'cell' | 'key' | 'tapKey' | 'rheostat', string>;
  sides: Record<'left' | 'right', string>;
  /** Text alternatives, with {left}, {right} and the letters in their places. */
  bridge: string;
  fourArms: string;
  careyFoster: string;
  /** {known} and {other} are the sides of resistance and galvanometer. */
  kelvin: string;
  labelled: LabelledWords;
}

/** Text alternatives of circuits whose parts are labelled with values; an arm is said with {first} and {second}. */
export interface LabelledWords extends Record<'one' | 'series' | 'parallel', string> {
  /** {gaps}, {length} */
  bridge: string;
  /** {gaps}, {length} */
  fourGaps: string;
  /** {cell} */
  cell: string;
  /** {galvanometer} */
  galvanometer: string;
  /** {upper}, {lower} */
  diamond: string;
}

export interface GraphWords {
  /** {width}, {height} */
  paper: string;
  /** {x}, {y}, {xFrom}, {xTo}, {yFrom}, {yTo} */
  axes: string;
  points: string;
  line: string;
  curve: string;
}
