import { type BridgeWords, type Wired, benchBridge } from '../../figures/bench/bridge.ts';
import { benchDial } from '../../figures/bench/dial.ts';
import { benchPlug } from '../../figures/bench/plug.ts';
import { endAt, jockeyTape, ruleTape, thermometerTape, windowFrom } from '../../figures/bench/tapes.ts';
import type { StudentBench } from '../../practice/bench.ts';
import type { BoxName } from '../../experiments/on-bench.ts';

/** A rule reaches beyond the longest wire by so many cm: for where it is laid, and for the terminal. */
const BEYOND = 5;

/** What a template shows of a bench; its drawings are made here, so that no script of a page carries them. */
export interface BenchView {
  wired: Wired;
  bridge: string;
  tape: string;
  dial: string;
  plug: string;
  boxes: { name: BoxName; plugs: readonly string[] }[];
  rule?: RuleView;
  thermometer?: string;
}

/** The two ends of a wire on a rule, and where the window to each begins, in mm. */
export type RuleView = Record<'left' | 'right', { svg: string; from: number }>;

/** A rule for wires of up to so many cm, the longest laid on it. */
export function ruleView(longest: number): RuleView {
  const end = (side: 'left' | 'right') => ({ svg: ruleTape(Math.ceil(longest) + BEYOND, side, endAt(side, longest)), from: windowFrom(endAt(side, longest)) });
  return { left: end('left'), right: end('right') };
}

export function benchView({ laid }: StudentBench, wired: Wired, words: BridgeWords): BenchView {
  return {
    wired,
    bridge: benchBridge(wired, words),
    tape: jockeyTape(),
    dial: benchDial(laid.bridge.galvanometer.divisions),
    plug: benchPlug(),
    boxes: Object.entries(laid.boxes).map(([name, [box]]) => ({ name: name as BoxName, plugs: box!.plugs })),
    ...(laid.clips && { rule: ruleView(laid.clips[1]) }),
    ...(laid.bath && { thermometer: thermometerTape() }),
  };
}
