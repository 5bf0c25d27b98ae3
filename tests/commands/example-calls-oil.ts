/** One call of each calculation on oil. */
export const oilCalls: readonly (readonly [string, readonly string[]])[] = [
  ['air-to-vent', ['content=157 l', 'filled=150 l']],
  ['circulation-time', ['volume=157 l', 'flow=60 l/min']],
  ['drum-count', ['volume=520 l', 'drum=200 l']],
  ['oil-compression', ['volume=100 l', 'bulk-modulus=300000 psi', 'pressure-rise=3000 psi']],
  ['oil-deviation', ['expected=157 l', 'measured=171 l']],
  ['oil-expansion', ['volume=180 l', 'expansion=0.0007 1/K', 'rise=40 K']],
  [
    'oil-volume',
    [
      'pipe-bores=80mm,25mm',
      'pipe-lengths=1m,2m',
      'annulus-outers=150mm',
      'annulus-inners=100mm',
      'annulus-lengths=1m',
      'casings=4.2 l,1.5 l',
    ],
  ],
  [
    'pump-oil-content',
    [
      'length=12.4m',
      'pressure-bore=60.3mm',
      'pressure-outside=76.1mm',
      'return-bore=127.1mm',
      'motor-casing=4.2 l',
    ],
  ],
  ['trapped-oil-pressure', ['bulk-modulus=15000 bar', 'expansion=0.0007 1/K']],
]
