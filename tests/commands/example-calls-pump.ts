/** One call of each calculation on units, hydraulics and the pump. */
export const pumpCalls: readonly (readonly [string, readonly string[]])[] = [
  ['affinity', ['flow=500 m³/h', 'head=120 m', 'power=181.6 kW', 'from-speed=1750 rpm', 'to-speed=1500 rpm']],
  ['convert', ['value=1 psi', 'to=Pa']],
  [
    'duty-pressure',
    ['shaft-power=140.1 kW', 'displacement=160 cm³/rev', 'speed=2400 rpm', 'mechanical-efficiency=92 %'],
  ],
  ['flow-from-ullage', ['start-volume=410 m³', 'end-volume=285 m³', 'duration=25 min']],
  ['flow-velocity', ['flow=300 m³/h', 'bore=200 mm']],
  ['head-from-gauge', ['gauge=8.2 bar(g)', 'tank=0.05 bar(g)', 'density=850 kg/m³', 'height=11.3 m']],
  ['head-from-pressure', ['pressure=8.336 bar', 'density=850 kg/m³']],
  ['motor', ['displacement=125 cm³/rev', 'pressure-drop=150 bar', 'flow=90 l/min']],
  [
    'power-balance',
    ['displacement=160 cm³/rev', 'pressure-drop=238 bar', 'speed=2400 rpm', 'pump-shaft-power=140.1 kW'],
  ],
  ['pressure-from-head', ['head=100 m', 'density=850 kg/m³']],
  ['pump-power', ['flow=500 m³/h', 'head=120 m', 'density=850 kg/m³', 'efficiency=75 %']],
  [
    'test-run',
    [
      'head=93 m',
      'speed=2000 rpm',
      'flow=150 m³/h',
      'curve-speed=2400 rpm',
      'curve-flows=0 m³/h,300 m³/h',
      'curve-heads=148 m,120 m',
    ],
  ],
]
