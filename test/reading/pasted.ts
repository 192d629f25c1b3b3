/**
 * What real people paste, as tables: a text, and each thing that a careful person takes from it (see `told.ts`). `cases` are what a
 * rule is for; `not` are look-alikes that it must leave alone. The texts are our own, the makers invented.
 */
export interface PastedClass {
  readonly name: string;
  readonly cases: readonly PastedCase[];
  readonly not: readonly PastedCase[];
}
export type PastedCase = readonly [text: string, items: readonly Record<string, unknown>[]];

const GAS_SHARES: PastedClass = {
  name: 'shares of a gas mix, in any order of words',
  cases: [
    [
      '- gas canister 230 g (70% butane 30% propane)',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- 2 canisters butane/propane 70/30, 230 g',
      [{ kind: 'fuel', n: 2, fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- Gas 450 g, 30/70 propane/butane',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { propane: 0.3, butane: 0.7 }, net: 450 }],
    ],
    [
      '- canister 230 g isobutane with 20 % propane',
      [{ kind: 'fuel', fuel: 'gas', mix: 'isobutane', shares: { propane: 0.2, isobutane: 0.8 }, net: 230 }],
    ],
    [
      '- canister 110 g: 25% propane, 25% isobutane, 50% butane',
      [
        {
          kind: 'fuel',
          fuel: 'gas',
          mix: 'isobutane',
          shares: { propane: 0.25, isobutane: 0.25, butane: 0.5 },
          net: 110,
        },
      ],
    ],
    [
      '- Gaskartusche 230 g, 70 % Butan, 30 % Propan',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- cartouche de gaz 230 g, propane 30 % butane 70 %',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { propane: 0.3, butane: 0.7 }, net: 230 }],
    ],
    [
      '- bombola gas 230 g, butano propano 70/30',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- баллон газ 230 г, 70% бутан 30% пропан',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- ガス缶 230g ブタン70% プロパン30%',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
  ],
  not: [
    ['- canister 230 g, 80% full, isobutane', [{ kind: 'fuel', fuel: 'gas', mix: 'isobutane', net: 230 }]],
    // They do not add up: nobody knows the rest.
    ['- canister 230 g, 30% butane 30% propane', [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', net: 230 }]],
    [
      '- propane 5 kg, butane 3 kg',
      [
        { kind: 'fuel', fuel: 'gas', mix: 'propane', net: 5000 },
        { kind: 'fuel', fuel: 'gas', mix: 'butane', net: 3000 },
      ],
    ],
  ],
};

export const PASTED: readonly PastedClass[] = [GAS_SHARES];
