/**
 * Verbs that a step or a line of advice may begin with; one meaning each: `close` is done to a valve or cover, `tighten` to a
 * bolt with its torque.
 *
 * Source: house list, common practice, no source.
 */
export const approvedVerbs: ReadonlySet<string> = new Set(
  `bend bolt bond call cap catch check choose clean close compare compress compute connect cool count cover cut disconnect drain draw
  drink drive earth empty enter exchange file fill filter fit flush guard hang heat hold hook isolate keep lay lead leave let lift
  limit listen lock look loosen lower mark measure mount move open paint photograph place plug post press pull purge push put raise
  read record release remove renew report restore rinse roll rope rotate screw seal search send separate set show slide spray sample start
  stand stay stop store strike support switch tag take tell test tick tie tighten touch treat try turn unlock use vent ventilate
  wait warn wash watch wear wipe work write`.split(/\s+/u),
)
