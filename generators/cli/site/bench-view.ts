import { type BridgeWords, type Wired, benchBridge } from '../../figures/bench/bridge.ts';
import { benchDial } from '../../figures/bench/dial.ts';
import { benchPlug } from '../../figures/bench/plug.ts';
import { jockeyTape, ruleTape, thermometerTape } from '../../figures/bench/tapes.ts';
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

/** The two ends of a wire on a rule. */
export type RuleView = Record<'left' | 'right', string>;

export const ruleView = (longest: number): RuleView => ({ left: ruleTape(Math.ceil(longest) + BEYOND, 'left'), right: ruleTape(Math.ceil(longest) + BEYOND, 'right') });

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
