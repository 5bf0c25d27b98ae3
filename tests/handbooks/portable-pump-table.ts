/**
 * What the 25th pump of vessel three has, the one that hangs in no tank: by hand from its papers (sheets P 1 to P 7).
 *
 * Nothing here is read from the content: where content and table differ, one of the two is wrong.
 */
export const portablePump = 'vessel-c/portable-1'

/** Its procedures, and the steps of each in the order of the work. */
export const stepsOfPortable: Readonly<Record<string, string>> = {
  'portable-readiness':
    'count-set read-hose-dates read-gear-dates read-gauge-dates look-at-hoses look-at-couplings exchange-ring look-at-frame move-discharge-piece set-tripod-up try-winch test-earth-cable join-couplings turn-shaft look-into-strainer loop-off',
  'portable-drill':
    'call-out isolate-outlet set-tripod-up fill-tub fit-test-piece lift-pump lower-pump hook-chain earth-pump connect-return connect-pressure valve-to-stop open-return open-pressure search-leaks start-pump set-speed read-pressures watch-run stop-pump close-pressure release-trapped close-return prove-zero disconnect-hoses lift-pump-out drain-leak-chamber take-test-piece-off restore-outlet stow',
  'portable-rigging':
    'write-plan compare-cargo compare-materials measure-hatch read-level read-atmosphere write-lift-plan brief-crew plug-scuppers isolate-outlet isolate-cargo set-tripod-up lay-hoses join-cargo-hoses take-blind-off fit-discharge-piece join-couplings turn-shaft raise-pump bolt-hose-to-pump connect-return connect-pressure earth-pump raise-clear open-hatch lower-pump set-foot hook-chain close-split-cover look-over-rig',
  'portable-running':
    'read-failures open-cargo-in open-return open-pressure search-leaks read-level start-pump open-discharge raise-speed compare-tanks make-rounds lower-speed draw-down oil-hose-fails cargo-hose-fails pump-draws-air rig-moves gas-or-radio close-after-stop stop-pump close-discharge write-end',
  'portable-recovery':
    'isolate-pressure release-trapped isolate-return prove-zero isolate-cargo let-hose-empty drain-hose part-cargo-hose take-load open-split-cover raise-pump let-drip close-hatch set-down disconnect-hoses take-hose-off move-pump rinse part-hoses join-couplings turn-shaft drain-leak-chamber blind-on restore-cargo restore-outlet take-tripod-down dispose stow report',
}

/** Every value that its pages show, with its figure. */
export const figuresOfPortable: Readonly<Record<string, string>> = {
  'rating.maximum-density': '1850 kg/m³',
  'rating.maximum-temperature': '60 °C',
  'rating.speed': '2900 rpm',
  'rating.maximum-return-pressure': '10 bar(g)',
  'rating.dry-run-limit': '60 s',
  'hose-flange-bolts.count': '8',
  'hose-flange-bolts.torque': '70 N·m',
  'hose-flange-bolts.passes': '21 · 42 · 70 N·m',
  'hose-flange-bolts.order': '1 5 3 7 2 6 4 8',
  'hose-flange-bolts.lubrication': 'thread and head with assembly paste',
  'tripod-leg-bolts.fastener': '3 × M20 class 8.8 × 110 mm',
  'tripod-leg-bolts.locking': 'lock pin through nut and bolt',
  'mass.pump': '72 kg',
  'mass.oil-hose-pair': '105 kg',
  'mass.control-frame': '26 kg',
  'mass.discharge-piece': '24 kg',
  'mass.tripod': '58 kg',
  'mass.cargo-hose': '62 kg',
  'mass.full-hose-metre': '20.7 kg',
  'mass.hanging-empty': '279 kg',
  'mass.hanging-full': '541 kg',
  'pump-lift.mass': '90 kg',
  'pump-lift.rated-load': '113 kg',
  'winch-lift.mass': '279 kg',
  'winch-lift.rated-load': '349 kg',
  'chain-lift.mass': '541 kg',
  'chain-lift.rated-load': '677 kg',
  'geometry.hatch-least': '450 mm',
  'geometry.hatch-most': '700 mm',
  'geometry.oil-hose-length': '25 m',
  'geometry.hose-set-length': '40 m',
  'house.portable-rig-time': '90 min',
  'setting.hose-age': '72 months',
  'setting.hose-test-interval': '12 months',
  'setting.gear-test-interval': '12 months',
  'setting.calibration-interval': '12 months',
  'setting.rubber-shelf-life': '84 months',
  'setting.turning-torque': '15 N·m',
  'setting.depth-most': '18 m',
  'setting.bend-radius': '600 mm',
  'setting.strap-distance': '3 m',
  'setting.foot-distance': '0.10 m',
  'setting.tank-zero': '0.01 bar(g)',
  'setting.tank-run-least': '−0.02 bar(g)',
  'setting.tank-run-most': '0.02 bar(g)',
  'setting.tub-level': '0.80 m',
  'setting.start-level': '0.80 m',
  'setting.slow-level': '0.35 m',
  'setting.pump-pressure-most': '215 bar(g)',
  'setting.slow-speed': '1500 rpm',
  'setting.pressure-zero': '5 bar(g)',
  'setting.return-zero': '0.5 bar(g)',
  'setting.cargo-zero': '0.2 bar(g)',
  'setting.cargo-pressure-most': '6.0 bar(g)',
  'setting.cargo-pressure-least': '0.3 bar(g)',
  'setting.leak-search-time': '3 min',
  'setting.drill-speed-least': '1400 rpm',
  'setting.drill-speed-most': '1500 rpm',
  'setting.drill-pressure-least': '1.4 bar(g)',
  'setting.drill-pressure-most': '2.2 bar(g)',
  'setting.drill-oil-pressure': '80 bar(g)',
  'setting.drill-run': '5 min',
  'setting.round-interval': '15 min',
  'setting.leak-most': '20 ml',
  'setting.hose-drain-time': '10 min',
}
