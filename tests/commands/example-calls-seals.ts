/** One call of each calculation on seals, run-out and heated bearings. */
export const sealAndBearingCalls: readonly (readonly [string, readonly string[]])[] = [
  ['bearing-growth', ['bore=100 mm', 'temperature=100 °C']],
  ['bearing-heating', ['bore=100 mm', 'growth=90 µm', 'expansion=11 µm/(m·K)']],
  ['lip-speed', ['diameter=60 mm', 'speed=2400 rpm']],
  ['o-ring-depth', ['section=3.53 mm', 'squeeze=12 %']],
  ['o-ring-gland', ['section=3.53 mm', 'depth=3.11 mm']],
  ['run-out', ['readings=0 mm,0.03 mm,0.05 mm,0.04 mm,0.01 mm,-0.02 mm,-0.04 mm,-0.03 mm']],
  ['seal-seat', ['lip=ptfe', 'diameter=60 mm', 'speed=2400 rpm']],
  ['shelf-life', ['material=NBR', 'cured=2024-06-15']],
]
