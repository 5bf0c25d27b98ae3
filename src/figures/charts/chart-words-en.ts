import type {Verdict} from '../../calculations/verdicts/judge-reading.ts'

/** English words of the charts; the same on the page as it is built and where a reading is tried. */
export const chartWordsEn = {
  tried: 'tried, not recorded',
  /** What is done by a verdict, as records say it. */
  verdicts: {
    STOP: 'STOP: ask the office.',
    RENEW: 'RENEW before the next use.',
    'NOT VALID': 'NOT VALID: repeat.',
    'CANNOT JUDGE': 'CANNOT JUDGE: a value or limit is not known.',
    WATCH: 'WATCH.',
    'WITHIN LIMITS': 'WITHIN LIMITS.',
  } satisfies Record<Verdict, string>,
  wear: {
    title: (what: string): string => `Wear of the ${what}.`,
    xTitle: 'running hours, h',
    yTitle: 'clearance, mm diametral',
    found: 'as found',
    left: 'as left',
    renewed: 'renewed',
    line: 'line of one ring',
    beyond: 'beyond its readings',
    band: '95 % band for one more reading',
    limit: (value: string, governs: string): string =>
      `renewal limit ${value} mm${governs === '' ? '' : `: ${governs}`}`,
    least: (value: string): string => `minimum new ${value} mm`,
    due: (hours: string): string => `due ${hours} h`,
    span: '1.5 x the span',
    none: 'No readings on record.',
    point: (phase: string, clearance: string, hours: string, day: string): string =>
      `${phase} ${clearance} mm at ${hours} h on ${day}`,
    points: (points: readonly string[]): string => `Readings: ${points.join('; ')}.`,
    renewals: (hours: readonly string[]): string =>
      `Renewed at ${hours.map((one) => `${one} h`).join(', ')}: each ring has a line of its own.`,
    growth: (ring: string, rise: string, count: number, scatter: string): string =>
      `${ring} grows by ${rise} mm diametral in 1000 h by the line of ${count} readings, with a scatter of ${scatter} mm.`,
    ring: (number: number, of: number): string =>
      of === 1 ? 'The clearance' : `Ring ${number} of ${of}: the clearance`,
    notEnough: (count: number): string =>
      `Not enough readings: ${count} of the ring that is fitted, and a line needs three. No hours are forecast.`,
    onePlace: 'All readings of the ring that is fitted stand at one count of hours: no line is drawn.',
    repeated: 'A reading as left on a ring that stayed repeats the one as found and does not count again.',
    limitStands: (value: string, governs: string, action: string): string =>
      `Renewal limit ${value} mm diametral${governs === '' ? '' : `, ${governs}`}; beyond it: ${action}.`,
    leastStands: (value: string): string => `Minimum of a new ring: ${value} mm at the least gap.`,
    noLimit: 'CANNOT JUDGE: the renewal limit is NOT KNOWN.',
    noLeast: 'The minimum of a new ring is NOT KNOWN.',
    noUncertainty: 'CANNOT JUDGE when the ring is due: nobody wrote with what each clearance was measured.',
    noRise: 'The line does not rise: no hours are due by condition.',
    condition: (hours: string, uncertainty: string): string =>
      `Condition due at ${hours} h, where the line comes within the ${uncertainty} mm of the instruments of the limit.`,
    bandDue: (hours: string): string =>
      `Condition due at ${hours} h, where the upper edge of the band meets the limit.`,
    lineMeets: (hours: string): string => `The line itself meets the limit at ${hours} h.`,
    bandUnused: 'With fewer than five readings the band is drawn and not used for the hours that are due.',
    met: 'That is not after the last reading: the limit less the uncertainty is reached.',
    beyondSpan: (trusted: string): string =>
      `Flag: that lies beyond 1.5 x the observed span, which ends at ${trusted} h: no forecast is trusted so far ahead.`,
    lastReading: (clearance: string, hours: string, verdict: string): string =>
      `Last reading ${clearance} mm at ${hours} h: ${verdict}`,
    gap: (gap: string): string => `Its least gap is ${gap} mm.`,
    noGap: 'Its least gap was not written.',
  },
  purge: {
    title: (what: string): string => `Purge results of the ${what}.`,
    xTitle: 'day',
    yTitle: 'volume, ml',
    fluids: {
      oil: 'oil',
      cargo: 'cargo',
      water: 'water',
      mixture: 'oil and cargo, or not told apart',
      none: 'dry',
    },
    notValid: 'NOT VALID',
    accepted: 'accepted up to here',
    large: (value: string): string => `STOP above ${value} ml`,
    none: 'No readings on record.',
    point: (day: string, what: string, verdict: string): string => `${day} ${what}, ${verdict}`,
    volume: (volume: string, fluid: string): string => `${volume} ml of ${fluid}`,
    points: (points: readonly string[]): string => `Results: ${points.join('; ')}.`,
    noGas: (day: string, volume: string): string =>
      `NOT VALID on ${day}: ${volume} without gas that was seen to flow; the pump counts as leaking until a purge counts.`,
    beyondAllTheSame: (day: string, volume: string, verdict: string): string =>
      `No gas was seen to flow on ${day}, and ${volume} is beyond its limit all the same: ${verdict}`,
    rise: 'three in a row rise',
    rising: (volumes: readonly string[], fluid: string, day: string): string =>
      `Flag: three results of ${fluid} in a row rise, ${volumes.join(', ')} ml up to ${day}. That is wear: plan the work before the limit is reached.`,
    last: (day: string, what: string, rates: readonly string[], verdict: string): string =>
      `Last result ${day}: ${[what, ...rates].join(', ')}: ${verdict}`,
    perHour: (rate: string): string => `${rate} ml for each running hour`,
    perDay: (rate: string): string => `${rate} ml for each day`,
    daysAlone: 'The pump did not run since the purge before: judged by days alone.',
    hoursAlone: 'There is no earlier day to count from: judged by running hours alone.',
    neither: 'CANNOT JUDGE the rate: neither running hours nor an earlier day to count from.',
    mixture: 'Oil and cargo together, or a liquid that nobody can tell: STOP, whatever the volume.',
    water: 'Water counts as cargo until it is shown to be condensed moisture.',
    limits: (kind: string, hourly: readonly string[], daily: readonly string[]): string =>
      `${kind}: for each running hour ${hourly.join(', ')}; for each day ${daily.join(', ')}.`,
    kinds: {oil: 'Oil', cargo: 'Cargo'},
    watchFrom: (value: string): string => `watched from ${value} ml`,
    renewAbove: (value: string): string => `RENEW above ${value} ml`,
    stopAbove: (value: string): string => `STOP above ${value} ml`,
    notKnown: 'limits NOT KNOWN',
    largeStands: (value: string): string => `Above ${value} ml between two purges: STOP.`,
    noLarge: 'CANNOT JUDGE: the largest volume between two purges is NOT KNOWN.',
  },
  hold: {
    title: (what: string): string => `Pressure hold of the ${what}.`,
    xTitle: 'minutes since the start',
    yTitle: 'absolute pressure, bar(a)',
    measured: 'measured',
    atStart: 'corrected to the temperature of the start',
    level: 'start: nothing lost',
    limitLine: 'allowed drop',
    allowed: (drop: string): string => `allowed drop ${drop} mbar`,
    time: (minutes: string): string => `hold time ${minutes} min`,
    none: 'No readings on record.',
    notEnough: (count: number): string =>
      `CANNOT JUDGE: ${count === 1 ? 'one reading is' : `${count} readings of one minute are`} not enough, and a hold has a start and an end.`,
    test: (test: string): string => `Last hold: ${test}.`,
    point: (minute: string, measured: string, corrected: string): string =>
      `minute ${minute}: measured ${measured} bar(a), corrected ${corrected} bar(a)`,
    points: (points: readonly string[]): string => `Readings: ${points.join('; ')}.`,
    fell: 'fell',
    rose: 'rose',
    gauge: (way: string, drop: string, warming: string, rise: string): string =>
      `The gauge alone ${way} by ${drop} mbar, while the gas changed by ${warming} K and the barometer by ${rise} mbar.`,
    corrected: (drop: string, minutes: string): string =>
      `Corrected for both with absolute pressures, ${drop} mbar are lost in ${minutes} min.`,
    nothingLost: (rise: string, minutes: string): string =>
      `Corrected for both with absolute pressures, nothing is lost in ${minutes} min: the pressure rose by ${rise} mbar.`,
    leak: (leak: string): string => `That is a leak of ${leak} ml of free gas a minute.`,
    noVolume: 'The leak is NOT KNOWN, for the volume of the cofferdam is not.',
    limit: (drop: string, minutes: string): string =>
      `Allowed drop ${drop} mbar over the hold time of ${minutes} min, which holds what gauge and thermometer can hide.`,
    noLimit: 'CANNOT JUDGE: allowed drop or hold time is NOT KNOWN.',
    short: 'The hold was shorter than the hold time: it is begun again.',
    onlyCorrected:
      'By the gauge alone it would be beyond the limit: temperature and barometer explain the difference.',
    hiddenByGauge: 'By the gauge alone it would be within the limit: temperature and barometer hid the loss.',
    verdict: (drop: string, verdict: string): string => `Drop after correction ${drop} mbar: ${verdict}`,
  },
  due: {
    rules: {
      condition: 'condition',
      hours: (job: string, hours: string): string => `${hours} running hours (${job})`,
      calendar: (job: string, time: string): string => `${time} (${job})`,
    },
    at: (rule: string, hours: string, day: string): string =>
      `by ${rule}: ${[hours === '' ? '' : `${hours} h`, day].filter((one) => one !== '').join(', ')}`,
    next: (first: string, others: readonly string[]): string =>
      `Next due ${first}, ${others.length > 0 ? `which comes first; ${others.join('; ')}` : 'the one rule that speaks'}.`,
    apart: (rules: readonly string[]): string =>
      `Next due ${rules.join('; ')}. Which comes first nobody can tell: how fast the hours grow is NOT KNOWN.`,
    rate: (perDay: string, from: string, to: string): string =>
      `Days stand on ${perDay} running hours a day, as from ${from} to ${to}.`,
    none: 'Next due: NOT KNOWN, no rule speaks.',
    now: 'Next due: before the next use. The last reading is beyond its limit, so no later hours or days count.',
    conditionUnknown: 'By condition nothing can be said, so the ring may be due earlier.',
  },
  tryIt: {
    names: {
      hours: 'Running hours',
      clearance: 'Clearance',
      uncertainty: 'Uncertainty of the instruments',
      gap: 'Least gap',
      since: 'Running hours since the purge before',
      volume: 'Volume',
      volumeDoubt: 'Uncertainty of the volume',
      minute: (row: string): string => `Minute, ${row}`,
      gauge: (row: string): string => `Gauge pressure, ${row}`,
      temperature: (row: string): string => `Temperature, ${row}`,
      barometer: (row: string): string => `Barometer, ${row}`,
    },
    missing: (what: string): string => `${what}: nothing is written. Write a number such as 0.85.`,
    noNumber: (what: string, text: string): string =>
      `${what}: “${text}” is no number of zero or more. Write digits alone, such as 0.85.`,
    comma: (what: string, text: string): string =>
      `${what}: “${text}” has a comma. Write a decimal point, such as 0.85.`,
    noDay: 'Day: nothing is written. Write the day of the reading, such as 2031-02-14.',
    badDay: (day: string): string => `Day: “${day}” is no day. Write one such as 2031-02-14.`,
    zeroClearance: 'Clearance: a ring without a clearance does not turn. Read the stations again.',
    wideGap: 'Least gap: it is above the clearance, which is the mean of the gaps. Read both again.',
    earlier: (day: string): string => `Day: the last reading is of ${day}. Try a day from then on.`,
    fall: (hours: string): string =>
      `Running hours: the last reading stands at ${hours} h, and hours never fall.`,
    rows: ['start', 'between', 'end'],
    order: 'Minutes: each reading stands at a later minute than the one before. Read them again.',
    barometerRange: 'Barometer: write it in mbar(a), such as 1013.',
    temperatureRange: 'Temperature: write it in °C, such as 18.5.',
    dry: 'Volume: a dry purge has none. Write 0, or name the liquid.',
    wet: 'Volume: a liquid has more than 0. Write it, or name the purge dry.',
    unread: 'The data of this chart cannot be read.',
  },
} as const

export type ChartWords = typeof chartWordsEn
