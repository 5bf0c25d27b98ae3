/** One call of each calculation on bolts and wrenches. */
export const boltCalls: readonly (readonly [string, readonly string[]])[] = [
  [
    'bolt-group',
    ['bolts=3', 'bolt-circle=500mm', 'pull=5883.99 N', 'least-preload=20 kN', 'moment=294.2 N·m'],
  ],
  ['bolt-strength', ['size=M6', 'class=8.8']],
  ['friction-from-torque-test', ['size=M16', 'force=80.97 kN', 'torque=205.9 N·m']],
  ['least-preload', ['preload=41.9 kN', 'tightening-factor=1.8']],
  ['lubricant-swap', ['size=M12', 'class=8.8', 'set-for=0.14', 'applied-to=0.08']],
  ['nut-factor-from-friction', ['size=M10', 'friction=0.12', 'head=15.2mm', 'hole=11mm']],
  ['nut-factor-preload', ['nut-factor=0.2', 'diameter=16mm', 'torque=218.5 N·m']],
  ['nut-factor-torque', ['nut-factor=0.2', 'diameter=16mm', 'preload=68.3 kN']],
  ['tightening-passes', ['torque=205.8 N·m']],
  ['torque-window', ['torque=47.6 N·m', 'graduation=1 N·m']],
  ['wrench-covers', ['torque=300 N·m', 'begin=5 N·m', 'most=200 N·m']],
  ['wrench-extension', ['torque=130 N·m', 'wrench=500mm', 'with-extension=650mm']],
  ['yield-clamp-force', ['size=M16', 'class=8.8', 'friction=0.12']],
]
