/** Verbs that a line of advice may begin with; one meaning each. House list, common practice, no source. */
export const approvedVerbs: ReadonlySet<string> = new Set(
  `bond call cap catch check clean close compress connect cool cover cut disconnect drain drink earth empty enter fill filter fit flush guard
  hang hold hook isolate keep lead leave let lift limit lock look loosen lower mark measure mount move open place plug pull purge push put raise
  read record release remove renew report rinse rotate search seal separate show sample start stand stay stop store strike support switch tag take test
  tie tighten touch treat try turn unlock use vent ventilate wait warn watch wear wipe work`.split(/\s+/u),
)
