/** Which entries of sources.yaml each calculation rests on; the build misses them by name when they are not there. */
export const calculationSources = {
  'tightening-torque': ['vdi-2230', 'iso-724', 'iso-898-1'],
  'tightening-passes': ['common-practice'],
  'tightening-order': ['common-practice'],
  'wear-ring-renewal': ['house-rules'],
  'annulus-volume': ['geometry'],
  'purge-upper-bound': ['house-rules'],
  'tightness-hold-time': ['ideal-gas'],
  'allowed-drop': ['ideal-gas'],
  'pressure-hold': ['ideal-gas'],
} as const satisfies Record<string, readonly string[]>
