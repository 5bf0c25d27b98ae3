// Small changes of a calculation that no test notices, each with the reason why no input tells it apart, or none that matters.

/** Lists of changes by the reason that they share. A change that stands several times in its file is listed as often. */
export const explained = [
  {
    because:
      'The margin for the last digits of a conversion ends here: only a figure equal to its end in every binary digit tells the two apart, and the width of the margin is a free choice.',
    changes: [
      "src/calculations/bolted-joints/lubricant-swap.ts: `share > 1 + 1e-9` in `return share > 1 + 1e-9 ? 'above utilisation' : 'within'` becomes `share >= 1 + 1e-9`",
      'src/calculations/bolted-joints/tightening-passes.ts: `Math.abs(before - 1) > 1e-9` becomes `Math.abs(before - 1) >= 1e-9`',
      'src/calculations/bolted-joints/wrench-covers.ts: `torque < least * (1 - 1e-9)` becomes `torque <= least * (1 - 1e-9)`',
      'src/calculations/bolted-joints/wrench-covers.ts: `torque > most * (1 + 1e-9)` becomes `torque >= most * (1 + 1e-9)`',
      'src/calculations/heating/bearing-heating.ts: `temperature.si > input.highest.si + 1e-9` becomes `temperature.si >= input.highest.si + 1e-9`',
      'src/calculations/hydraulics/hydraulic-motor.ts: `share > 1 + 1e-9` in `if (share > 1 + 1e-9)` becomes `share >= 1 + 1e-9`',
      'src/calculations/hydraulics/power-balance.ts: `Math.abs(difference) <= tolerance.si + 1e-12` becomes `Math.abs(difference) < tolerance.si + 1e-12`',
      'src/calculations/lifting/din-580-eyebolts.ts: `angle <= Math.PI / 4 + rounding` becomes `angle < Math.PI / 4 + rounding`',
      'src/calculations/lifting/din-580-eyebolts.ts: `angle > Math.PI / 2 + rounding` becomes `angle >= Math.PI / 2 + rounding`',
      'src/calculations/lifting/load-share.ts: `distance > 1e-9 + 1e-6 * reach` becomes `distance >= 1e-9 + 1e-6 * reach`',
      'src/calculations/lifting/load-share.ts: `share < -1e-9` in `if (shares.some((share) => share < -1e-9))` becomes `share <= -1e-9`',
      'src/calculations/lifting/screw-torque.ts: `input.flankAngle.si > Math.PI / 4 + 1e-9` becomes `input.flankAngle.si >= Math.PI / 4 + 1e-9`',
      'src/calculations/lifting/shackle-limit.ts: `angle <= Math.PI / 4 + rounding` becomes `angle < Math.PI / 4 + rounding`',
      'src/calculations/lifting/shackle-limit.ts: `angle > Math.PI / 2 + rounding` becomes `angle >= Math.PI / 2 + rounding`',
      'src/calculations/lifting/shackle-limit.ts: `between > (2 / 3) * Math.PI + rounding` becomes `between >= (2 / 3) * Math.PI + rounding`',
      'src/calculations/lifting/sling-angle.ts: `fromVertical.si > greatestSlingAngle.si + rounding` becomes `fromVertical.si >= greatestSlingAngle.si + rounding`',
      'src/calculations/lifting/sling-limit.ts: `input.angleFromVertical.si <= Math.PI / 4 + 1e-9` becomes `input.angleFromVertical.si < Math.PI / 4 + 1e-9`',
      'src/calculations/oil/air-to-vent.ts: `air < -1e-12 * input.content.si` becomes `air <= -1e-12 * input.content.si`',
      'src/calculations/planning/service-interval.ts: `Math.abs(whole - 1) > 1e-6` becomes `Math.abs(whole - 1) >= 1e-6`',
      'src/calculations/pump/affinity.ts: `Math.abs(Math.log(ratio)) > -Math.log(leastDiameterRatio) + 1e-9` becomes `Math.abs(Math.log(ratio)) >= -Math.log(leastDiameterRatio) + 1e-9`',
      'src/calculations/pump/curve-head.ts: `flow.si > right.flow.si * (1 + noise)` becomes `flow.si >= right.flow.si * (1 + noise)`',
      'src/calculations/run-out/run-out.ts: `angle > -1e-9` in `return angle > -1e-9 ? 0 : angle + 2 * Math.PI` becomes `angle >= -1e-9`',
      'src/calculations/seals/o-ring-sections.ts: `Math.abs(one.section.si - section.si) <= sameSection` becomes `Math.abs(one.section.si - section.si) < sameSection`',
      'src/calculations/verdicts/judge-reading.ts: `room < -noise` in `if (room < -noise) return limit.outside` becomes `room <= -noise`',
      "src/calculations/verdicts/judge-reading.ts: `room < band - noise` in `return room <= noise || room < band - noise ? 'WATCH' : 'WITHIN LIMITS'` becomes `room <= band - noise`",
      "src/calculations/verdicts/judge-reading.ts: `room <= noise` in `return room <= noise || room < band - noise ? 'WATCH' : 'WITHIN LIMITS'` becomes `room < noise`",
    ],
  },
  {
    because: 'An angle of zero passes on to the next line, which makes zero of it.',
    changes: [
      'src/calculations/run-out/run-out.ts: `angle >= 0` in `if (angle >= 0) return angle` becomes `angle > 0`',
    ],
  },
  {
    because:
      'The two differ where the readings do, and then the total indicator reading is as large as their difference and counts a thousand times as much: the threshold of what is rounding moves by a thousandth of itself at most.',
    changes: [
      'src/calculations/run-out/run-out.ts: `Math.max(...values.map(Math.abs))` becomes `Math.min(...values.map(Math.abs))`',
    ],
  },
  {
    because:
      'The index always lies inside its list, which has as many entries: the value behind ?? is there for the types alone.',
    changes: [
      'src/calculations/run-out/run-out.ts: `0` in `(2 / count) * values.reduce((sum, value, index) => sum + (value - mean) * of(angles[index] ?? 0), 0)` becomes `1`',
      'src/calculations/run-out/run-out.ts: `0` in `const angle = angles[index] ?? 0` becomes `1`',
      'src/calculations/run-out/run-out.ts: `angles[index] ?? 0` in `(2 / count) * values.reduce((sum, value, index) => sum + (value - mean) * of(angles[index] ?? 0), 0)` becomes `angles[index]`',
      'src/calculations/run-out/run-out.ts: `angles[index] ?? 0` in `const angle = angles[index] ?? 0` becomes `angles[index]`',
      'src/calculations/wear/straight-line.ts: `0` in `const residuals = xs.map((x, index) => (ys[index] ?? 0) - meanY - slope * (x - meanX))` becomes `1`',
      'src/calculations/wear/straight-line.ts: `0` in `const slope = sum(xs.map((x, index) => (x - meanX) * ((ys[index] ?? 0) - meanY))) / spreadX` becomes `1`',
      'src/calculations/wear/straight-line.ts: `ys[index] ?? 0` in `const residuals = xs.map((x, index) => (ys[index] ?? 0) - meanY - slope * (x - meanX))` becomes `ys[index]`',
      'src/calculations/wear/straight-line.ts: `ys[index] ?? 0` in `const slope = sum(xs.map((x, index) => (x - meanX) * ((ys[index] ?? 0) - meanY))) / spreadX` becomes `ys[index]`',
    ],
  },
  {
    because:
      'The same constant goes into each summand and cancels: the waves of even stations over a full turn, and the distances of x from its mean, add up to zero.',
    changes: [
      'src/calculations/run-out/run-out.ts: `value - mean` in `(2 / count) * values.reduce((sum, value, index) => sum + (value - mean) * of(angles[index] ?? 0), 0)` becomes `value + mean`',
      'src/calculations/wear/straight-line.ts: `(ys[index] ?? 0) - meanY` in `const slope = sum(xs.map((x, index) => (x - meanX) * ((ys[index] ?? 0) - meanY))) / spreadX` becomes `(ys[index] ?? 0) + meanY`',
    ],
  },
  {
    because:
      'The same constant is added to each of the residuals, of which only greatest less least is used.',
    changes: [
      'src/calculations/run-out/run-out.ts: `value - mean` in `return value - mean - cosine * Math.cos(angle) - sine * Math.sin(angle)` becomes `value + mean`',
    ],
  },
  {
    because:
      'Each turn shortens the error to an eighth or less: forty turns, half of them, and one more or less from either start end on the same sixteen digits.',
    changes: [
      'src/calculations/clearances/annular-gap-leakage.ts: `0.03` in `let velocity = velocityOf(gap, 0.03)` becomes `0.0303`',
      'src/calculations/clearances/annular-gap-leakage.ts: `0` in `for (let turn = 0; turn < 40; turn += 1) velocity = velocityOf(gap, blasius(reynoldsOf(velocity)))` becomes `1`',
      'src/calculations/clearances/annular-gap-leakage.ts: `1` in `for (let turn = 0; turn < 40; turn += 1) velocity = velocityOf(gap, blasius(reynoldsOf(velocity)))` becomes `2`',
      'src/calculations/clearances/annular-gap-leakage.ts: `40` in `for (let turn = 0; turn < 40; turn += 1) velocity = velocityOf(gap, blasius(reynoldsOf(velocity)))` becomes `41`',
      'src/calculations/clearances/annular-gap-leakage.ts: `turn < 40` in `for (let turn = 0; turn < 40; turn += 1) velocity = velocityOf(gap, blasius(reynoldsOf(velocity)))` becomes `turn <= 40`',
    ],
  },
  {
    because:
      'The interval is halved until low and high are neighbours in binary numbers: one turn more or less, or every second of two hundred, ends on the same number.',
    changes: [
      'src/calculations/wear/student-t.ts: `0` in `for (let turn = 0; turn < 60; turn += 1) {` becomes `1`',
      'src/calculations/wear/student-t.ts: `60` in `for (let turn = 0; turn < 60; turn += 1) {` becomes `61`',
      'src/calculations/wear/student-t.ts: `turn < 60` in `for (let turn = 0; turn < 60; turn += 1) {` becomes `turn <= 60`',
      'src/calculations/wear/wear-forecast.ts: `0` in `for (let turn = 0; turn < 200; turn += 1) {` becomes `1`',
      'src/calculations/wear/wear-forecast.ts: `1` in `for (let turn = 0; turn < 200; turn += 1) {` becomes `2`',
      'src/calculations/wear/wear-forecast.ts: `200` in `for (let turn = 0; turn < 200; turn += 1) {` becomes `201`',
      'src/calculations/wear/wear-forecast.ts: `turn < 200` in `for (let turn = 0; turn < 200; turn += 1) {` becomes `turn <= 200`',
    ],
  },
  {
    because:
      'Only a middle at which both sides are equal in every binary digit tells the two apart; the search then closes in on that middle from the other side.',
    changes: [
      'src/calculations/wear/student-t.ts: `shareWithin(middle, degreesOfFreedom) < within` becomes `shareWithin(middle, degreesOfFreedom) <= within`',
      'src/calculations/wear/wear-forecast.ts: `upperEdge(line, middle) < limit` becomes `upperEdge(line, middle) <= limit`',
    ],
  },
  {
    because:
      'The two times come from a formula and a search and are equal in every binary digit by chance alone; either may then be named as the one that governs.',
    changes: [
      'src/calculations/wear/wear-forecast.ts: `byBand < byCondition` in `const bandGoverns = byBand !== undefined && byBand < byCondition` becomes `byBand <= byCondition`',
    ],
  },
  {
    because:
      'Nothing compares with `undefined` as less, so that a missing band does not govern either way: the first half is there for the types.',
    changes: [
      'src/calculations/wear/wear-forecast.ts: `byBand !== undefined && byBand < byCondition` becomes `byBand < byCondition`',
    ],
  },
  {
    because:
      'A class outside the columns has no entry under its name either: the first half is there for the types.',
    changes: [
      'src/calculations/bolted-joints/bolt-load-tables.ts: `column && rows.find((row) => row.size === size)?.loads[column]` becomes `rows.find((row) => row.size === size)?.loads[column]`',
    ],
  },
  {
    because:
      'The rows rise without a gap from zero, so that the first one that ends above the diameter is also the one that begins at or below it; zero and less are refused by the next line.',
    changes: [
      'src/calculations/clearances/least-running-clearance.ts: `diameter >= one.from.si && diameter < one.below.si` becomes `diameter < one.below.si`',
    ],
  },
  {
    because:
      'The motor is asked with a flow or a speed and then always answers with its running: the line is there for the types.',
    changes: [
      "src/calculations/hydraulics/power-balance.ts: `throw new Error('Unexpected motor at rest, expected one that runs by its flow or speed')` becomes `nothing`",
    ],
  },
  {
    because:
      'Without a flow of oil both figures are taken at one speed and differ by the same share, so that one agrees when the other does.',
    changes: [
      'src/calculations/hydraulics/power-balance.ts: `torque.agrees && power.agrees` becomes `power.agrees`',
      'src/calculations/hydraulics/power-balance.ts: `torque.agrees && power.agrees` becomes `torque.agrees || power.agrees`',
      'src/calculations/hydraulics/power-balance.ts: `torque.agrees && power.agrees` becomes `torque.agrees`',
    ],
  },
  {
    because:
      'Two supports that lie equally far out lie on the same line through the middle: either shows its direction.',
    changes: [
      'src/calculations/lifting/load-share.ts: `lengthOf(one) > lengthOf(far)` becomes `lengthOf(one) >= lengthOf(far)`',
    ],
  },
  {
    because: 'All supports lie in the middle here, so that a slope is multiplied by zero.',
    changes: [
      'src/calculations/lifting/load-share.ts: `0` in `return {x: 0, y: 0}` becomes `1`',
      'src/calculations/lifting/load-share.ts: `0` in `return {x: 0, y: 0}` becomes `1`',
    ],
  },
  {
    because: 'A collar that is undefined and a missing one are the same to the torque of the screw.',
    changes: [
      'src/calculations/lifting/lowering-bolts.ts: `input.collar ? {collar: input.collar} : {}` becomes `{collar: input.collar}`',
    ],
  },
  {
    because:
      'The day was read by then, and years before 1900 are refused in reading it: the line is there for the types.',
    changes: [
      // biome-ignore lint/suspicious/noTemplateCurlyInString: the line of the source as it stands
      'src/calculations/planning/stripping-ceiling.ts: `throw new RangeError(`Unexpected date \\`${input.built}\\`, expected one from 1900 on`)` becomes `nothing`',
    ],
  },
  {
    because:
      'The result is not used: the call refuses what is no day, and the same day a year later is refused for the same.',
    changes: ['src/calculations/seals/elastomer-shelf-life.ts: `0` in `yearsLater(day, 0)` becomes `1`'],
  },
  {
    because: 'Only the sign of the difference counts in sorting.',
    changes: [
      "src/calculations/wear/split-at-renewals.ts: `1` in `return reading.phase === 'as-found' ? 0 : 1` becomes `2`",
    ],
  },
  {
    because:
      'A symbol that stands in no line is dropped again by the last line: looking for it first only makes the pattern shorter.',
    changes: [
      'src/calculations/symbols-used.ts: `formula.some((line) => line.includes(symbol)) && symbols.findIndex((one) => one.symbol === symbol) === index` becomes `symbols.findIndex((one) => one.symbol === symbol) === index`',
    ],
  },
  {
    because:
      'Without a symbol there is nothing to keep, whatever the pattern finds; a line without a find adds an entry that is no symbol.',
    changes: [
      'src/calculations/symbols-used.ts: `line.match(pattern) ?? []` becomes `line.match(pattern)`',
      'src/calculations/symbols-used.ts: `unique.length === 0 ? [] : formula.flatMap((line) => line.match(pattern) ?? [])` becomes `formula.flatMap((line) => line.match(pattern) ?? [])`',
    ],
  },
]
