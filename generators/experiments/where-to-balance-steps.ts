import type { Step } from '../quantities/step.ts';
import { type KnownGap, bridgeInfluences, bridgeMean, bridgeTable } from './bridge-steps.ts';

/** X near mid-wire, then all along the wire: how far each row is off the mid-wire value, and how far its reading alone may put it off. */
export function whereToBalanceSteps(known: KnownGap): Step[] {
  return [
    ...bridgeInfluences,
    { kind: 'given', id: 'dl', tex: '\\Delta l', unit: 'cm' },
    ...bridgeTable(known),
    bridgeMean(known),
    ...bridgeTable(known, { suffix: 'Along', tex: 'X' }),
    {
      kind: 'relation',
      id: 'away',
      tex: '\\delta',
      unit: '%',
      per: 'bridgeAlong',
      as: '100 * (XAlong - meanX) / meanX',
      digits: { decimals: 1 },
      slips: [{ id: 'the wrong way round', as: '100 * (meanX - XAlong) / meanX' }],
    },
    {
      kind: 'relation',
      id: 'reach',
      tex: 'p',
      unit: '%',
      per: 'bridgeAlong',
      as: '100 * (dl / lAlong + dl / rAlong)',
      digits: { decimals: 2 },
      routes: [{ id: 'one fraction', via: [], as: '100 * dl * W / (lAlong * rAlong)' }],
      slips: [
        { id: 'one part of the wire alone', as: '100 * dl / lAlong' },
        { id: 'the other part alone', as: '100 * dl / rAlong' },
        { id: 'errors subtracted', as: '100 * (dl / lAlong - dl / rAlong)' },
        { id: 'not in per cent', as: 'dl / lAlong + dl / rAlong' },
      ],
    },
  ];
}
