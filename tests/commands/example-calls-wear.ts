/** One call of each calculation on clearances, wear, planning and verdicts. */
export const wearCalls: readonly (readonly [string, readonly string[]])[] = [
  [
    'annular-gap-leakage',
    ['diameter=200mm', 'gap=0.25 mm radial', 'length=20mm', 'head=60m', 'friction=0.04'],
  ],
  [
    'judge-reading',
    ['reading=0.97 mm diametral', 'not-above=0.96 mm diametral', 'uncertainty=0.03 mm diametral'],
  ],
  ['least-running-clearance', ['diameter=200mm']],
  ['order-by-date', ['needed-on=2031-03-01', 'lead-time=45 d']],
  ['service-interval', ['shares=50,50%', 'intervals=1000,3000 h']],
  ['spares-for-service', ['expected-use=1.6']],
  ['stripping-ceiling', ['built=1998-05-01', 'category=Y']],
  [
    'wear-forecast',
    [
      'hours=0,2100,4300,6500 h',
      'clearances=0.48,0.56,0.66,0.74 mm diametral',
      'limit=0.96 mm diametral',
      'uncertainty=0.03 mm diametral',
    ],
  ],
]
