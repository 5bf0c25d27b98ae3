/** One call of each calculation on lifting. */
export const liftingCalls: readonly (readonly [string, readonly string[]])[] = [
  ['eyebolt-limit', ['size=M16', 'angle-from-axis=30 °']],
  ['gear-limit', ['carried=577 kg', 'limit=1 t']],
  ['load-share', ['load=100 kg', 'x=0 m,0.5 m', 'centre-x=0.3 m']],
  ['lowering-bolts', ['size=M20', 'load=5 kN', 'travel=400 mm', 'friction=0.15']],
  [
    'screw-torque',
    [
      'load=6.4 kN',
      'pitch-diameter=30 mm',
      'lead=8 mm',
      'flank-angle=0 °',
      'friction=0.08',
      'collar-diameter=40 mm',
      'collar-friction=0.08',
    ],
  ],
  ['shackle-limit', ['limit=2 t', 'side-angle=45 °']],
  ['sling-angle', ['length=3 m', 'height=2.4 m']],
  ['sling-limit', ['one-leg=4.5 t', 'legs=2', 'angle-from-vertical=45 °']],
  ['sling-tension', ['load=1000 kg', 'legs=2', 'angle-from-vertical=30 °']],
]
